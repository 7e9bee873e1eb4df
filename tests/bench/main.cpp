// The bench measures in memory that is kept as the window keeps it.
#include <benchmark/benchmark.h>

#include "gui/desktop/memory.h"

int main(int count, char** words) {
    dyestead::gui::keep_memory();
    benchmark::Initialize(&count, words);
    if (benchmark::ReportUnrecognizedArguments(count, words)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
}
