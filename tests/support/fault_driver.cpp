#include "tests/support/fault_driver.h"

#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <filesystem>
#include <utility>

namespace peelpack::test {

namespace {

namespace fs = std::filesystem;

/// Makes `to` the same as `from`.
void mirror(const fs::path& from, const fs::path& to)
{
    fs::remove_all(to);
    fs::copy(from, to, fs::copy_options::recursive);
}

class Driver {
public:
    Driver(const Prepare& prepare, const Action& action, const Check& check, const FaultPlan& plan)
        : m_action(action), m_check(check), m_plan(plan)
    {
        fs::create_directory(m_work);
        m_database = prepare(m_work.string());
        mirror(m_work, m_prepared);
    }

    FaultFigures run()
    {
        this->runOne(Fault::None, 0);
        const std::size_t count = m_figures.operations.size();
        REQUIRE(count > 0);
        for (std::size_t at = 1; at <= count; ++at) {
            const bool isWrite = m_figures.operations[at - 1].sort == Operation::Sort::Write;
            for (const Fault fault : m_plan.faults) {
                if (isWrite || (fault != Fault::ShortWrite && fault != Fault::DiskFull)) {
                    this->runOne(fault, at);
                }
            }
        }
        return std::move(m_figures);
    }

private:
    void runOne(Fault fault, std::size_t at)
    {
        mirror(m_prepared, m_work);
        INFO(nameOf(fault) << this->described(at));
        bool acknowledged = false;
        std::vector<Operation> operations;
        DurableDisk disk;
        {
            FaultVfs vfs;
            vfs.arm(fault, at);
            acknowledged = m_action(m_database);
            operations = vfs.operations();
            disk = vfs.disk();
        }
        REQUIRE(operations.size() >= at);
        if (fault == Fault::None) {
            REQUIRE(acknowledged);
            m_figures.operations = std::move(operations);
        }
        this->loseThePower(disk, acknowledged);
    }

    void loseThePower(const DurableDisk& disk, bool acknowledged)
    {
        const bool onceIsAll = !disk.isUndecided();
        if (!onceIsAll) {
            mirror(m_work, m_stopped);
        }
        bool isFirst = true;
        for (const std::uint32_t seed : m_plan.seeds) {
            if (!isFirst) {
                mirror(m_stopped, m_work);
            }
            isFirst = false;
            disk.crash(seed);
            INFO("power lost with seed " << seed << (acknowledged ? ", acknowledged" : ", not acknowledged"));
            ++m_figures.cases;
            m_check(m_database, acknowledged);
            if (onceIsAll) {
                break;
            }
        }
    }

    [[nodiscard]] std::string described(std::size_t at) const
    {
        if (at == 0) {
            return {};
        }
        const Operation& operation = m_figures.operations[at - 1];
        return " operation " + std::to_string(at) + " (" + nameOf(operation.sort) + " " + operation.file + ", " +
               std::to_string(operation.bytes) + " bytes)";
    }

    const Action& m_action;
    const Check& m_check;
    const FaultPlan& m_plan;
    TemporaryFolder m_folder;
    fs::path m_work = m_folder.path() / "work";         ///< where the action runs
    fs::path m_prepared = m_folder.path() / "prepared"; ///< as prepare() left it
    fs::path m_stopped = m_folder.path() / "stopped";   ///< as the action left it
    std::string m_database;
    FaultFigures m_figures;
};

} // namespace

FaultFigures forEveryFault(const Prepare& prepare, const Action& action, const Check& check, const FaultPlan& plan)
{
    return Driver(prepare, action, check, plan).run();
}

} // namespace peelpack::test
