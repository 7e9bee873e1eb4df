# The build with sanitizers: domain and db with their tests; reports and window are left out, so that it stays short.
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O1 -g1" CACHE STRING "")
set(DYESTEAD_WINDOW OFF CACHE BOOL "")
set(DYESTEAD_SANITIZE ON CACHE BOOL "")
set(DYESTEAD_PRECOMPILED_HEADERS ON CACHE BOOL "")
