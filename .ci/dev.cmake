# The build people work in: cmake -C .ci/dev.cmake -S . -B build/dev
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O2 -g1" CACHE STRING "") # asserts stay in; enough to read a stack trace
set(DYESTEAD_PRECOMPILED_HEADERS ON CACHE BOOL "")
