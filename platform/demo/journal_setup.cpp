#include "platform/demo/journal_setup.h"

#include "platform/demo/demo_program.h"
#include "platform/demo/invented_people.h"
#include "platform/demo/need.h"
#include "platform/files/resources.h"
#include "platform/session/cards.h"
#include "platform/session/program_rules.h"
#include "sync/keys/code.h"

#include <array>

namespace peelpack::demo {
namespace {

constexpr std::int64_t daysToAnswer = 14;
constexpr std::size_t fewestCases = 12;
constexpr std::size_t mostCases = 40;

struct InventedStaff {
    std::string_view name;
    std::string_view className; ///< empty: the director
    std::string_view site;
};
constexpr std::array inventedStaff = std::to_array<InventedStaff>({{"Adela Winther", "", ""},
                                                                   {"Bertil Moreau", "spring-class", sites[0]},
                                                                   {"Celia Ostrander", "spring-class", sites[1]},
                                                                   {"Davin Achterberg", "fall-class", sites[2]},
                                                                   {"Esme Kirwan", "fall-class", sites[1]}});

struct InventedPreceptor {
    std::string_view name;
    std::string_view credential;
    std::string_view pin; ///< empty: signs on their own phone
};
constexpr std::array people = std::to_array<InventedPreceptor>({{"L. Brandt", "CST", "482913"},
                                                                {"T. Osei", "CST", "730518"},
                                                                {"D. Hallam", "RN", ""},
                                                                {"M. Varga", "CST", "915264"},
                                                                {"K. Ellery", "CST", "268407"},
                                                                {"V. Strand", "CST", ""},
                                                                {"J. Pruitt", "CST", "604179"},
                                                                {"P. Nakagome", "CST", "357092"},
                                                                {"W. Abernethy", "CSFA", "841630"}});
static_assert(people.size() == sites.size() * preceptorsPerSite);

/// The members of the staff who know the preceptors of each site, as indexes.
constexpr std::array<std::size_t, sites.size()> vouching{1, 2, 3};

void makePeople(World& world, const JournalProgress& progress)
{
    std::vector<std::string> files;
    for (const InventedStaff& one : inventedStaff) {
        const bool leads = one.className.empty();
        world.staff.push_back({std::string(one.name),
                               leads ? journal::Role::Director : journal::Role::Instructor,
                               leads ? std::vector<std::string>()
                                     : std::vector<std::string>{std::string(one.className), std::string(one.site)},
                               {}});
        files.push_back(world.folder +
                        (leads ? "/director.peelvault" : "/instructor-" + fileNameOf(one.name) + ".peelvault"));
    }
    const auto addClass = [&](std::span<const std::string_view> names, const char* className, std::size_t first) {
        for (const std::string_view name : names) {
            Student student;
            student.name = name;
            student.className = className;
            student.instructor = first + world.students.size() % 2;
            files.push_back(world.folder + "/student-" + fileNameOf(name) + ".peelvault");
            world.students.push_back(std::move(student));
        }
    };
    addClass(springStudents, "spring-class", 1);
    addClass(moreSpringStudents, "spring-class", 1);
    addClass(fallStudents, "fall-class", 3);
    addClass(moreFallStudents, "fall-class", 3);

    std::vector<Installation> homes =
        makeInstallations(files, demoPassphrase, world.marks, world.random,
                          [&](std::size_t done) { progress("Vaults made:", done, files.size()); });
    for (std::size_t i = 0; i < homes.size(); ++i) {
        const bool isStaff = i < world.staff.size();
        (isStaff ? world.staff[i].home : world.students[i - world.staff.size()].home) = std::move(homes[i]);
    }
}

void inventCases(World& world, const catalogue::Catalogue& catalogue)
{
    std::vector<std::string_view> names;
    names.reserve(world.students.size());
    for (const Student& student : world.students) {
        names.emplace_back(student.name);
    }
    constexpr int days = static_cast<int>(weeks) * 7 - 2;
    constexpr std::uint32_t seed = 20'260'111;
    const DemoClass made = demoClass(catalogue, "program", names, world.firstDay, days, seed);
    PreceptorDays<std::size_t> preceptorDays;
    auto from = made.rows.begin();
    for (std::size_t i = 0; i < world.students.size(); ++i) {
        const auto end = std::find_if(from, made.rows.end(),
                                      [&](const sheet::CaseRow& row) { return row.student != world.students[i].name; });
        world.students[i].cases = casesOf({from, end}, world.firstDay, i, fewestCases, mostCases);
        arrangeDays(world.students[i].cases, preceptorDays);
        from = end;
    }
}

void beginAsDirector(World& world)
{
    session::Rules rules = need(session::rulesOfShippedSet(files::usualSetId));
    rules.term = "Spring 2026";
    rules.firstDay = world.firstDay;
    rules.lastDay = world.day(weeks - 1, Friday);
    rules.counted = session::countsAllButNewCards;

    world.programCode = world.random.secret(keys::codeSecretBytes);
    const keys::SigningKey key = need(keys::programKey(world.programCode.view()));
    Staff& director = world.staff.front();
    need(session::beginProgram(director.home.vault(world.marks, world.random), key, director.name, rules, world.look(),
                               world.random));
    director.home.begin(world.marks, world.look(), world.random);
}

void givePreceptorsTheirKeys(World& world, const JournalProgress& progress)
{
    for (std::size_t i = 0; i < people.size(); ++i) {
        const InventedPreceptor& one = people[i];
        const std::size_t site = i / preceptorsPerSite;
        world.preceptors.push_back({world.random.id(),
                                    std::string(one.name),
                                    std::string(one.credential),
                                    std::string(sites[site]),
                                    {},
                                    std::nullopt});
        Preceptor& preceptor = world.preceptors.back();
        if (one.pin.empty()) {
            preceptor.phone = need(keys::deviceKey(keys::newDeviceSeeds(world.random)));
        } else {
            giveCard(world, preceptor, std::string(one.pin));
        }
        vouchFor(world.staff[vouching[site]].home.session(), preceptor);
        progress("Signing cards made:", i + 1, people.size());
    }
}

} // namespace

void admitInto(World& world, session::Session& inviter, Installation& home, const std::string& name, journal::Role role,
               const std::vector<std::string>& scopes, const std::optional<keys::Id>& person)
{
    const session::OpenInvitation open = need(session::invite(inviter, name, role, scopes, person, daysToAnswer));
    const keys::Invitation invitation = need(keys::Invitation::fromCode(open.code));
    const keys::InvitationReply reply = need(session::join(home.vault(world.marks, world.random), invitation, name));
    const session::Answered answered = need(session::matchReply(inviter, reply));
    if (answered.digits != keys::comparisonDigits(invitation, reply)) {
        throw Stopped{{base::ErrorCode::BadValue, "The six digits differ."}};
    }
    need(session::grant(inviter, reply));
    home.begin(world.marks, world.look(), world.random);
    if (role == journal::Role::Student) {
        const session::Directory directory(inviter);
        take(home.session(), {parcelOf(inviter, session::toStudent(inviter, *directory.person(invitation.person)))});
    } else {
        take(home.session(), {parcelOf(inviter, session::toColleagues(inviter))});
    }
}

Card& giveCard(World& world, Preceptor& preceptor, std::string pin)
{
    const session::Session& director = world.director();
    keys::SigningCard code = session::newCard(director);
    if (!preceptor.cards.empty()) { // in place of a lost one
        code.card = preceptor.cards.front().unlocked->card;
        code.epoch = static_cast<std::uint32_t>(preceptor.cards.size() + 1);
    }
    Card card;
    card.file = fileNameOf(preceptor.name) + (preceptor.cards.empty() ? "" : "-new") + ".card";
    card.pin = std::move(pin);
    card.code = code.code();
    keys::SigningKey key = need(keys::cardKey(code, director.program(), card.pin));
    card.unlocked =
        std::make_unique<session::UnlockedCard>(session::UnlockedCard{std::move(key), code.card, code.epoch, true});
    preceptor.cards.push_back(std::move(card));
    return preceptor.cards.back();
}

void vouchFor(session::Session& staff, const Preceptor& preceptor)
{
    journal::Vouch vouch;
    vouch.person = preceptor.person;
    vouch.name = preceptor.name;
    vouch.credential = preceptor.credential;
    vouch.site = preceptor.site;
    if (preceptor.phone) {
        vouch.keyKind = journal::KeyKind::Device;
        vouch.key = preceptor.phone->signing.verifyKey();
    } else {
        const session::UnlockedCard& card = *preceptor.cards.back().unlocked;
        session::nameCard(vouch, card.card, card.epoch, card.key.verifyKey());
    }
    need(staff.append(staff.programStream(), vouch));
}

void setUp(World& world, const catalogue::Catalogue& catalogue, const JournalProgress& progress)
{
    makePeople(world, progress);
    inventCases(world, catalogue);
    const base::Date before = base::Date::fromDays(world.firstDay.days() - 5);
    world.clock.set(before, 9);
    beginAsDirector(world);
    for (std::size_t i = 1; i < world.staff.size(); ++i) {
        Staff& one = world.staff[i];
        admitInto(world, world.director(), one.home, one.name, one.role, one.scopes, std::nullopt);
    }
    world.clock.set(before, 12); // now they hear of one another
    const keys::Bytes everybody = parcelOf(world.director(), session::toColleagues(world.director()));
    for (std::size_t i = 1; i < world.staff.size(); ++i) {
        take(world.staff[i].home.session(), {everybody});
    }
    world.clock.set(before, 13);
    givePreceptorsTheirKeys(world, progress);
    world.clock.set(base::Date::fromDays(before.days() + 1), 9);
    exchange(world);
    for (std::size_t i = 0; i < world.students.size(); ++i) {
        Student& student = world.students[i];
        world.clock.set(base::Date::fromDays(before.days() + 2), 10);
        admitInto(world, world.instructorOf(student), student.home, student.name, journal::Role::Student,
                  {student.className}, std::nullopt);
        student.person = student.home.session().person();
        progress("Students who joined:", i + 1, world.students.size());
    }
}

} // namespace peelpack::demo
