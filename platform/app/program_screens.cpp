#include "platform/app/program_screens.h"

#include "qml/words/bridge.h"

namespace peelpack::app {
namespace {

using shell::Phone;
using shell::SettingUp;

constexpr const char* secret = "harbor linen oak";

void fillRules(program::RulesDraft& draft)
{
    draft.setTerm(QStringLiteral("Spring 2027"));
    draft.setFirstDay(QStringLiteral("2027-01-11"));
    draft.setLastDay(QStringLiteral("2027-05-14"));
    draft.choose(QStringLiteral("spread10"));
}

void openPage(ScreenWalk& walk, const char* page)
{
    walk.put("staffHome", "over", QString());
    walk.put("staffHome", "programPage", QString::fromLatin1(page));
    walk.put("staffHome", "over", QStringLiteral("program"));
}

void walkPeople(ScreenWalk& walk, program::ProgramPages& program)
{
    openPage(walk, "people");
    walk.shoot("70-people");
    program.people()->show(program.people()->students()->rows().front().id);
    openPage(walk, "person");
    walk.shoot("71-person");
    walk.put("personPage", "ending", program.people()->devices()->rows().front().id);
    walk.shoot("71-ending-device");
    openPage(walk, "invite");
    walk.shoot("72-invite");
    program.inviting()->invite(0, QStringLiteral("Maren Holt"), QStringLiteral("Spring class"));
    openPage(walk, "invitation");
    walk.shoot("73-invitation");
    openPage(walk, "people");
    walk.shoot("73-invited");
    openPage(walk, "classList");
    walk.shoot("74-class-list");
    program.classInviting()->read(QStringLiteral("spring.csv"),
                                  QByteArrayLiteral("name,class\nOda Lindqvist,Spring class\n,Spring class\n"
                                                    "Tomas Reyes,Spring class\nOda Lindqvist,Spring class\n"));
    walk.shoot("74-class-read");
    program.classInviting()->invite();
    walk.shoot("74-class-invited");
    openPage(walk, "grant");
    walk.shoot("75-grant");
    program.granting()->readText(QStringLiteral("no answer of ours"));
    walk.shoot("75-no-answer");
}

/// Somebody joins on another device, and their answer is compared.
void walkAnswer(ScreenWalk& walk, program::ProgramPages& program)
{
    keys::SystemRandom random;
    program.inviting()->invite(0, QStringLiteral("Maren Holt"), QStringLiteral("Spring class"));
    const auto invitation = keys::Invitation::fromCode(words::toBytes(program.inviting()->code()));
    const auto device = keys::deviceKey(keys::newDeviceSeeds(random));
    if (!invitation || !device) {
        walk.fail(program.inviting()->error());
        return;
    }
    const keys::Bytes reply = keys::answer(invitation.value(), device.value()).code();
    openPage(walk, "grant");
    program.granting()->read(words::toArray(reply));
    walk.shoot("76-digits");
    program.granting()->grant();
    walk.shoot("76-let-in");
}

void walkCards(ScreenWalk& walk, program::ProgramPages& program)
{
    openPage(walk, "preceptors");
    walk.shoot("80-preceptors");
    program.preceptors()->show(program.preceptors()->rows()->rows().front().id);
    openPage(walk, "preceptor");
    walk.shoot("81-preceptor");
    walk.put("preceptorPage", "ending", 0);
    walk.shoot("81-ending-card");
    program.cardMaking()->begin();
    openPage(walk, "card");
    walk.shoot("82-card");
    walk.put("cardPage", "pinHere", false);
    walk.shoot("82-card-without-pin");
    program.cardMaking()->make(QStringLiteral("M. Okoro"), QStringLiteral("RN"), QStringLiteral("North Campus"),
                               QStringLiteral("481516"), QStringLiteral("481516"));
    walk.waitUntil([&] { return !program.cardMaking()->busy(); });
    walk.shoot("83-card-made");
    program.vouching()->drop();
    openPage(walk, "vouch");
    walk.shoot("84-own-phone");
    if (program.vouching()->waiting()->rowCount() > 0) {
        program.vouching()->choose(0);
    } else {
        program.vouching()->readKeyText(QString(64, QLatin1Char('5')));
    }
    walk.shoot("85-vouch");
    program.vouching()->drop();
    openPage(walk, "paperToCut");
    walk.shoot("86-papers");
}

/// The rules besides the policy as an instructor sees them: days and sites are theirs to change, the rest to be read.
void walkRules(ScreenWalk& walk, program::ProgramPages& program, const instructor::StaffDesk& desk)
{
    openPage(walk, "rules");
    walk.shoot("87-rules-so-far");
    openPage(walk, "requirements");
    walk.shoot("87-changes");
    openPage(walk, "signers");
    walk.shoot("87-who-may-sign");
    openPage(walk, "procedures");
    walk.shoot("87-no-own-procedures");
    openPage(walk, "sites");
    walk.shoot("88-sites");
    program.sites()->begin();
    program.sites()->setName(QStringLiteral("West Annex"));
    program.sites()->setPhones(2);
    program.sites()->setNote(QStringLiteral("Ask at the desk for a locker"));
    walk.shoot("88-another-site");
    program.sites()->sign();
    walk.shoot("88-one-more-site");
    openPage(walk, "days");
    program.days()->setOfClass(1);
    walk.shoot("89-days");
    program.days()->open(QStringLiteral("spring.csv"), QByteArrayLiteral("date,site\n2026-03-12\n"));
    walk.shoot("89-day-without-site");
    const base::Date today = desk.today();
    QByteArray table = "date,site,start,end\n";
    for (const int ahead : {-7, 0, 1, 7, 8}) {
        table +=
            QByteArray::fromStdString(base::Date::fromDays(today.days() + ahead).iso()) + ",North Campus,07:00,15:30\n";
    }
    program.days()->open(QStringLiteral("spring.csv"), table);
    walk.shoot("89-days-read");
    program.days()->takeIn();
    walk.shoot("89-other-days");
    walk.put("clinicalDaysPage", "showPast", true);
    walk.put("clinicalDaysPage", "emptying", true);
    walk.shoot("89-days-taken-away");
}

void walkOwnProcedures(ScreenWalk& walk, program::OwnProcedures& procedures)
{
    openPage(walk, "procedures");
    const QByteArray header = program::OwnProcedures::emptyTable();
    procedures.open(QStringLiteral("own.tsv"), header + "own-washing\tJoint washing\t\t\tfoot\t\t\n");
    walk.shoot("95-bad-table");
    procedures.open(QStringLiteral("own.tsv"),
                    header + "own-washing\tJoint washing through a small cut\tjoint wash\t\torthopedics|general\t\t\n" +
                        "carpal-tunnel-release\tOpen carpal tunnel release\t\t\tplastic-reconstructive\t\t\n");
    walk.shoot("95-table-read");
    procedures.takeIn();
    walk.shoot("95-own-procedures");
    walk.put("ownProceduresPage", "emptying", true);
    walk.shoot("95-table-taken-away");
}

/// The same as only the director changes them.
void walkDirectorsRules(ScreenWalk& walk, program::ProgramPages& program)
{
    openPage(walk, "sites");
    walk.shoot("95-no-sites");
    openPage(walk, "days");
    walk.shoot("95-no-days");
    openPage(walk, "signers");
    walk.shoot("95-anybody-signs");
    openPage(walk, "requirements");
    walk.shoot("95-no-change");
    program.requirements()->beginDraft();
    walk.put("requirementsPage", "changing", true);
    program.requirements()->readBack();
    walk.shoot("95-other-requirements");
    program.requirements()->setOfClass(0);
    program.requirements()->setFrom(QStringLiteral("2027-08-23"));
    program.requirements()->choose(QStringLiteral("spread10"));
    program.requirements()->setReason(QStringLiteral("The accreditor's new list"));
    program.requirements()->readBack();
    walk.shoot("95-change-read-back");
    program.requirements()->sign();
    walk.put("requirementsPage", "changing", false);
    walk.shoot("95-requirements");
    openPage(walk, "signers");
    program.signers()->begin();
    program.signers()->setCredential(QStringLiteral("RN"));
    program.signers()->sign();
    walk.shoot("95-another-credential");
    program.signers()->setObservation(true);
    program.signers()->sign();
    program.signers()->begin();
    program.signers()->setCredential(QStringLiteral("CST"));
    program.signers()->setFirst(true);
    program.signers()->setSecond(true);
    program.signers()->setObservation(true);
    program.signers()->sign();
    walk.shoot("95-who-may-sign");
    program.signers()->change(0);
    walk.shoot("95-change-credential");
    walkOwnProcedures(walk, *program.procedures());
}

} // namespace

void walkFirstDirector(ScreenWalk& walk, Phone& phone)
{
    SettingUp* settingUp = phone.first()->settingUp();
    walk.put("firstPages", "way", QStringLiteral("setUp"));
    walk.shoot("03-set-up");
    settingUp->next();
    walk.shoot("03-set-missing");
    fillRules(*settingUp->rules());
    settingUp->next();
    walk.shoot("04-rules-read-back");
    settingUp->next();
    walk.shoot("05-program-code");
    const QString code = settingUp->programCode();
    settingUp->next();
    settingUp->typeBack(QStringLiteral("AAAAA-AAAAA-AAAAA-AAAAA-AAAAA-AAAAA-AAAAA"));
    walk.shoot("06-other-code");
    settingUp->typeBack(code);
    walk.shoot("07-director");
    walk.put("firstPages", "way", QStringLiteral("takeOver"));
    walk.shoot("08-take-over");
    walk.put("firstPages", "way", QString());
    settingUp->rules()->begin();
    while (settingUp->step() != SettingUp::Rules) {
        settingUp->back();
    }
}

void walkProgram(ScreenWalk& walk, Phone& phone)
{
    walkPeople(walk, *phone.program());
    walkAnswer(walk, *phone.program());
    walkCards(walk, *phone.program());
    walkRules(walk, *phone.program(), *phone.staffDesk());
}

void walkDirector(ScreenWalk& walk, Phone& phone)
{
    SettingUp* settingUp = phone.first()->settingUp();
    walk.put("firstPages", "way", QStringLiteral("setUp"));
    fillRules(*settingUp->rules());
    settingUp->next();
    settingUp->next();
    const QString code = settingUp->programCode();
    settingUp->next();
    settingUp->typeBack(code);
    const QString typed = QLatin1String(secret);
    settingUp->make(QStringLiteral("Nora Stone"), typed, typed, false);
    walk.waitUntil([&] { return !settingUp->busy(); });
    walk.shoot("90-program-made");
    settingUp->finish();
    walk.waitUntil([&] { return phone.stage() == Phone::Staff; });
    if (phone.program() == nullptr) {
        walk.fail(phone.error());
        return;
    }
    phone.staffDesk()->finish();
    walk.shoot("91-nothing-yet");
    walk.put("staffHome", "place", 3);
    walk.shoot("92-director");
    openPage(walk, "people");
    walk.shoot("93-nobody-yet");
    openPage(walk, "preceptors");
    walk.shoot("93-no-preceptor-yet");
    openPage(walk, "rules");
    walk.shoot("94-rules");
    program::ProgramRules* rules = phone.program()->rules();
    rules->beginDraft();
    walk.put("programRulesPage", "changing", true);
    walk.shoot("95-other-rules");
    rules->draft()->choose(QStringLiteral("cap15"));
    rules->readBack();
    walk.shoot("96-read-back");
    rules->sign();
    walk.put("programRulesPage", "changing", false);
    walk.shoot("97-signed-rules");
    walkDirectorsRules(walk, *phone.program());
    openPage(walk, "handOver");
    walk.shoot("98-hand-over");
    phone.lock();
}

} // namespace peelpack::app
