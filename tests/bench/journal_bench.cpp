// Speed and size of the journal as ratios against bare libraries in the same run, because machines are noisy: build
// with -DPEELPACK_BENCH=ON and run build/bin/peelpack_journal_bench [rows] [folder]. Rows are letters of "abce", all
// when none are named; the folder is on the disk whose commits are measured, that of the program itself when none is
// named. Never a timed test.

#include "tests/bench/journal_rows.h"

#include <QCoreApplication>

#include <cstdio>
#include <sodium.h>
#include <unistd.h>

int main(int argc, char** argv)
{
    using namespace peelpack;
    const QCoreApplication application(argc, argv);
    if (sodium_init() < 0) {
        return 1;
    }
    const std::string rows = argc > 1 ? argv[1] : "abce";
    const bench::Folder place = argc > 2 ? bench::Folder(argv[2]) : bench::Folder(argv[0]).parent_path();
    const bench::Folder folder = place / ("journal_bench." + std::to_string(getpid()));
    std::filesystem::create_directories(folder);

    std::printf("%-66s %10s %10s %7s  %s\n", "what against what", "ours ms", "bare ms", "ratio", "10%-90%    target");
    const auto wanted = [&](char row) { return rows.find(row) != std::string::npos; };
    if (wanted('a')) {
        bench::takeInRows();
    }
    if (wanted('b')) {
        bench::openRow(folder);
    }
    if (wanted('c')) {
        bench::appendRow(folder);
    }
    if (wanted('e')) {
        bench::sqlcipherRows(folder);
    }
    std::filesystem::remove_all(folder);
    return 0;
}
