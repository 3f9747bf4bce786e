// Speed as ratios against a named library in the same run, because machines are noisy: build with -DPEELPACK_BENCH=ON
// and run build/bin/peelpack_bench. Never a timed test.

#include "core/catalogue/search.h"
#include "core/sheet/row_writer.h"
#include "core/sheet/sheet_reader.h"
#include "core/tally/placement.h"
#include "core/tally/tally.h"
#include "platform/files/resources.h"
#include "tests/support/files.h"
#include "tests/support/glpk_oracle.h"
#include "tests/support/random_history.h"
#include "tests/support/shipped_sets.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <map>
#include <string>
#include <sys/resource.h>
#include <vector>

using namespace peelpack;
using catalogue::Category;
using catalogue::categoryAt;

namespace {

constexpr int students = 64;

/// 200 sheets a student, a quarter of the procedures listed under two specialties, three in five first scrub.
tally::Item sheetItem(support::Dice& dice, std::uint32_t operation)
{
    tally::Item item;
    item.operation = operation;
    const bool first = dice.chance(60);
    const auto category = [&] { return dice.chance(30) ? Category::General : categoryAt(1 + dice.below(11)); };
    item.logged = category();
    catalogue::CategorySet& set = first ? item.asFirst : item.asSecond;
    set.add(item.logged);
    if (dice.chance(25)) {
        set.add(category());
    }
    return item;
}

std::vector<std::vector<tally::Item>> histories()
{
    std::vector<std::vector<tally::Item>> all;
    for (int student = 0; student < students; ++student) {
        support::Dice dice(static_cast<std::uint32_t>(student));
        std::vector<tally::Item> items;
        for (std::uint32_t sheet = 0; sheet < 200; ++sheet) {
            items.push_back(sheetItem(dice, sheet));
        }
        all.push_back(std::move(items));
    }
    return all;
}

const char* const setIds[] = {"cap15", "spread10"};

void placer(benchmark::State& state)
{
    const requirement::RequirementSet set = support::shippedSet(setIds[state.range(0)]);
    const auto all = histories();
    tally::Placer placer(set);
    std::vector<double> micros;
    std::size_t i = 0;
    for (auto step : state) {
        const auto start = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(placer.best(all[i++ % all.size()]));
        micros.push_back(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
        state.SetIterationTime(micros.back() * 1e-6);
    }
    std::sort(micros.begin(), micros.end());
    state.counters["median_us"] = micros[micros.size() / 2];
    state.counters["p99_us"] = micros[micros.size() * 99 / 100];
}

void glpk(benchmark::State& state)
{
    const requirement::RequirementSet set = support::shippedSet(setIds[state.range(0)]);
    const auto all = histories();
    std::vector<double> micros;
    std::size_t i = 0;
    for (auto step : state) {
        const auto start = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(support::bestByIntegerProgram(set, all[i++ % all.size()]));
        micros.push_back(std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
        state.SetIterationTime(micros.back() * 1e-6);
    }
    std::sort(micros.begin(), micros.end());
    state.counters["median_us"] = micros[micros.size() / 2];
}

/// A file of `count` sheets of count / 200 students.
std::string sheetFile(std::uint32_t count)
{
    std::string text = sheet::headerLine();
    sheet::CaseRow row;
    support::Dice dice(7);
    row.surgeon = "Dr Okafor";
    row.site = "North Campus";
    row.room = "Room 4";
    row.attested = sheet::Strength::Card;
    for (std::uint32_t i = 0; i < count; ++i) {
        const tally::Item item = sheetItem(dice, i);
        row.sheet = "s" + std::to_string(i % 200);
        row.student = "student " + std::to_string(i / 200);
        row.date = base::Date::fromDays(20'000 + static_cast<std::int32_t>(i % 120));
        row.procedure = "Procedure " + std::to_string(dice.below(900));
        row.categories = {item.logged};
        for (std::size_t category = 0; category < catalogue::categoryCount; ++category) {
            if (item.categories().contains(categoryAt(category))) {
                row.categories.add(categoryAt(category));
            }
        }
        for (const sheet::Skill skill : sheet::allSkills) {
            row.marks.set(skill, sheet::Mark::Yes);
        }
        if (item.asFirst.empty()) {
            row.marks.set(sheet::Skill::Setup, sheet::Mark::No);
        }
        text += sheet::rowLine(row);
    }
    return text;
}

void readRows(benchmark::State& state)
{
    const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    const std::string text = sheetFile(100'000);
    for (auto step : state) {
        sheet::SheetReader reader(catalogue);
        for (std::size_t at = 0; at < text.size(); at += 1U << 20U) {
            reader.feed(std::string_view(text).substr(at, 1U << 20U));
        }
        benchmark::DoNotOptimize(reader.finish());
    }
    state.counters["rows_per_second"] =
        benchmark::Counter(100'000.0 * static_cast<double>(state.iterations()), benchmark::Counter::kIsRate);
}

void everyKeystroke(benchmark::State& state)
{
    const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    catalogue::Search search(catalogue);
    std::vector<std::string> typed;
    for (const std::vector<std::string>& row : support::tableRows("fixtures/catalogue/queries.tsv")) {
        for (std::size_t length = 1; length <= row[0].size(); ++length) {
            typed.push_back(row[0].substr(0, length));
        }
    }
    std::vector<double> micros;
    for (auto step : state) {
        for (const std::string& text : typed) {
            const auto start = std::chrono::steady_clock::now();
            benchmark::DoNotOptimize(search.find(text, 10));
            micros.push_back(
                std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count());
        }
    }
    std::sort(micros.begin(), micros.end());
    state.counters["median_us"] = micros[micros.size() / 2];
    state.counters["p99_us"] = micros[micros.size() * 99 / 100];
}

/// 2,000,000 sheets of 10,000 students: read, then best and as logged, then what to ask for next as well.
void aWholeState(benchmark::State& state)
{
    const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    const requirement::RequirementSet set = support::shippedSet("spread10");
    const std::string part = sheetFile(200'000); // 1,000 students, ten times under other names
    const std::string_view body = std::string_view(part).substr(sheet::headerLine().size());
    for (auto step : state) {
        sheet::SheetReader reader(catalogue);
        reader.feed(sheet::headerLine());
        for (int times = 0; times < 10; ++times) {
            std::string renamed(body);
            for (std::size_t at = renamed.find("student "); at != std::string::npos;
                 at = renamed.find("student ", at + 8)) {
                renamed[at] = static_cast<char>('a' + times);
            }
            reader.feed(renamed);
        }
        const base::Result<sheet::SheetReader::Reading> reading = reader.finish();
        const sheet::SheetBook& book = reading.value().book;
        tally::Tallier tallier(set, tally::Level::Recorded);
        std::int64_t counted = 0;
        for (const sheet::BookStudent& student : book.students()) {
            counted += tallier.tally(book, student, {true, true, state.range(0) != 0}).best.value.counted;
        }
        benchmark::DoNotOptimize(counted);
        state.counters["sheets"] = static_cast<double>(book.sheetCount());
        state.counters["students"] = static_cast<double>(book.students().size());
    }
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    state.counters["peak_MiB"] = static_cast<double>(usage.ru_maxrss) / 1024.0;
}

BENCHMARK(placer)->Arg(0)->Arg(1)->UseManualTime()->Unit(benchmark::kMicrosecond);
BENCHMARK(glpk)->Arg(0)->Arg(1)->UseManualTime()->Unit(benchmark::kMicrosecond)->Iterations(students);
BENCHMARK(readRows)->Unit(benchmark::kMillisecond);
BENCHMARK(everyKeystroke)->Unit(benchmark::kMillisecond)->Iterations(3);
BENCHMARK(aWholeState)->Arg(0)->Arg(1)->Unit(benchmark::kSecond)->Iterations(1);

/// Prints the usual table and keeps the medians for the ratios below it.
class RatioReporter : public benchmark::ConsoleReporter {
public:
    void ReportRuns(const std::vector<Run>& runs) override
    {
        ConsoleReporter::ReportRuns(runs);
        for (const Run& run : runs) {
            if (const auto median = run.counters.find("median_us"); median != run.counters.end()) {
                m_medians[run.benchmark_name()] = median->second.value;
            }
        }
    }
    void printRatios() const
    {
        for (int i = 0; i < 2; ++i) {
            double ours = 0;
            double theirs = 0;
            for (const auto& [name, median] : m_medians) {
                const std::string end = "/" + std::to_string(i);
                ours = name.find("placer" + end) == 0 ? median : ours;
                theirs = name.find("glpk" + end) == 0 ? median : theirs;
            }
            if (ours > 0 && theirs > 0) {
                std::printf("best tally of 200 sheets, %s: median %.0f us, GLPK %.0f us, ratio %.1f\n", setIds[i], ours,
                            theirs, theirs / ours);
            }
        }
    }

private:
    std::map<std::string, double> m_medians;
};

} // namespace

int main(int argc, char** argv)
{
    benchmark::Initialize(&argc, argv);
    RatioReporter reporter;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    reporter.printRatios();
    return 0;
}
