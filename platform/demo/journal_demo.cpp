#include "platform/demo/journal_demo.h"

#include "platform/demo/journal_readme.h"
#include "platform/demo/journal_term.h"
#include "platform/demo/need.h"
#include "platform/files/text_file.h"
#include "sync/keys/code.h"

#include <cstdio>
#include <filesystem>
#include <system_error>

namespace peelpack::demo {
namespace {

namespace fs = std::filesystem;

base::Error cannotWrite(const std::string& what)
{
    return {base::ErrorCode::CannotWrite, "Cannot make " + what + "; check the space that is left and your rights."};
}

void makeFolder(const std::string& folder)
{
    std::error_code failed;
    fs::create_directories(folder, failed);
    if (failed) {
        throw Stopped{cannotWrite(folder)};
    }
}

void write(const std::string& file, keys::ByteView bytes)
{
    need(files::writeWholeFile(file, {reinterpret_cast<const char*>(bytes.data()), bytes.size()}));
}

void writeCardsAndParcels(const World& world)
{
    for (const Preceptor& preceptor : world.preceptors) {
        for (const Card& card : preceptor.cards) {
            write(world.folder + "/cards/" + card.file, card.code.view());
        }
    }
    for (const Student& student : world.students) {
        write(world.folder + "/parcels/" + fileNameOf(student.name) + ".peelparcel", student.parcel);
    }
}

std::size_t entriesOf(const merge::Ledger& ledger)
{
    std::size_t entries = 0;
    for (const auto& [id, feed] : ledger.feeds()) {
        feed.eachSegment(
            [&](std::uint32_t /*from*/, const journal::Segment& segment) { entries += segment.entries.size(); });
    }
    return entries;
}

JournalFigures figuresOf(const World& world)
{
    JournalFigures figures;
    figures.staff = world.staff.size();
    figures.students = world.students.size();
    for (const Student& student : world.students) {
        for (const DemoCase& one : student.cases) {
            figures.sheets += one.sheet.isZero() ? 0U : 1U;
        }
    }
    figures.entries = entriesOf(world.director().ledger());
    return figures;
}

void countFiles(const std::string& folder, JournalFigures& figures)
{
    std::error_code failed;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(folder, failed)) {
        if (entry.is_regular_file(failed)) {
            ++figures.files;
            figures.bytes += entry.file_size(failed);
        }
    }
}

void closeAll(World& world, const JournalProgress& progress)
{
    std::size_t done = 0;
    for (Staff& one : world.staff) {
        one.home.close();
        progress("Vaults closed:", ++done, world.staff.size() + world.students.size());
    }
    for (Student& student : world.students) {
        student.home.close();
        progress("Vaults closed:", ++done, world.staff.size() + world.students.size());
    }
}

JournalFigures makeWorld(const std::string& folder, DemoMarks& marks, const catalogue::Catalogue& catalogue,
                         const JournalProgress& progress)
{
    for (const char* part : {"", "/cards", "/parcels"}) {
        makeFolder(folder + part);
    }
    World world(folder, marks);
    setUp(world, catalogue, progress);
    liveThroughTheTerm(world, progress);
    JournalFigures figures = figuresOf(world);
    write(folder + "/program.id", keys::bytesOf(keys::hex(world.director().program().view()) + "\n"));
    writeCardsAndParcels(world);
    write(folder + "/README.txt", keys::bytesOf(readmeOf(world, figures)));
    closeAll(world, progress);
    countFiles(folder, figures);
    return figures;
}

} // namespace

base::Result<JournalDemo> JournalDemo::make(const std::string& folder, const std::string& marks,
                                            const catalogue::Catalogue& catalogue, const JournalProgress& progress)
{
    std::error_code failed;
    fs::remove_all(folder, failed);
    JournalDemo demo(folder, marks);
    try {
        demo.m_figures = makeWorld(folder, *demo.m_marks, catalogue, progress);
    } catch (const Stopped& stopped) {
        return stopped.error;
    }
    return demo;
}

JournalDemo::~JournalDemo()
{
    if (m_marks) {
        m_marks->forgetAll();
        std::error_code failed;
        fs::remove_all(m_folder, failed);
    }
}

base::Result<bool> JournalDemo::keep(const std::string& folder)
{
    if (std::rename(m_folder.c_str(), folder.c_str()) != 0) {
        return cannotWrite(folder);
    }
    m_marks.reset();
    return true;
}

} // namespace peelpack::demo
