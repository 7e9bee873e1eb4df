# What clang-tidy reads: the commands of the whole program, no precompiled headers (it cannot use GCC's), no tests.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(DYESTEAD_PRECOMPILED_HEADERS OFF CACHE BOOL "")
set(DYESTEAD_TESTS OFF CACHE BOOL "")
