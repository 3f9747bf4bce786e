#include "platform/app/staff_screens.h"

#include "platform/app/program_screens.h"

namespace peelpack::app {
namespace {

using shell::Phone;

class StaffWalk {
public:
    StaffWalk(ScreenWalk& walk, Phone& phone) : m_walk(walk), m_phone(phone) {}

    void drawInstructor()
    {
        m_phone.openInstructorDemo();
        m_walk.waitUntil([this] { return m_phone.stage() == Phone::Staff || !m_phone.error().isEmpty(); });
        if (m_phone.stage() != Phone::Staff) {
            m_walk.fail(m_phone.error());
            return;
        }
        m_phone.staffDesk()->finish();
        instructor::StaffPages* staff = m_phone.staff();
        m_walk.shoot("50-check");
        drawChecked();
        staff->list()->leave();
        m_walk.put("staffHome", "place", 1);
        m_walk.shoot("60-class");
        staff->student()->show(staff->board()->rows()->rows().front().id);
        m_walk.put("staffHome", "over", QStringLiteral("student"));
        m_walk.shoot("61-student");
        m_phone.evidence()->completion()->show(staff->student()->id());
        m_walk.put("staffHome", "over", QStringLiteral("completion"));
        m_walk.shoot("66-not-the-director");
        m_walk.put("staffHome", "over", QString());
        m_walk.put("staffHome", "place", 2);
        m_walk.shoot("62-parcels");
        m_phone.takeInDemoParcels();
        m_walk.waitUntil([&] { return !staff->parcels()->busy(); });
        m_walk.shoot("63-taken-in");
        if (!staff->parcels()->packAsCodesFor(staff->parcels()->answers()->rows().front().id)) {
            m_walk.fail(staff->parcels()->error());
        }
        m_walk.put("staffHome", "shownFor", staff->parcels()->answers()->rows().front().id);
        m_walk.put("staffHome", "over", QStringLiteral("showCodes"));
        m_walk.shoot("63-codes");
        m_walk.put("staffHome", "over", QStringLiteral("readCodes"));
        m_walk.shoot("63-no-camera");
        m_walk.put("staffHome", "over", QString());
        drawEvidence();
        m_walk.put("staffHome", "place", 3);
        m_walk.shoot("64-me");
        m_walk.put("staffHome", "over", QStringLiteral("rules"));
        m_walk.shoot("65-rules");
        walkProgram(m_walk, m_phone);
        m_phone.leaveDemo();
        m_walk.settle();
    }

    /// A plain sheet, one with a review, one of an operation at which two students were, and each form.
    void drawChecked()
    {
        instructor::StaffPages* staff = m_phone.staff();
        const auto show = [&](const std::function<bool()>& fits, const char* screen) {
            QStringList keys;
            for (const instructor::WaitingRow& row : staff->list()->rows()->rows()) {
                keys.append(row.key);
            }
            for (const QString& key : keys) {
                staff->list()->show(key);
                if (fits()) {
                    m_walk.shoot(screen);
                    return;
                }
            }
            m_walk.fail(QStringLiteral("The demo has no sheet for %1.").arg(QString::fromLatin1(screen)));
        };
        instructor::CheckedSheet* sheet = staff->sheet();
        show([&] { return sheet->reviews()->rowCount() > 0; }, "51-review");
        show([&] { return sheet->others()->rowCount() > 0; }, "52-one-operation");
        show([&] { return !sheet->bar().isEmpty(); }, "53-own-signature");
        show([&] { return !sheet->differences().isEmpty(); }, "54-differences");
        show([&] { return !sheet->imported().isEmpty(); }, "55-imported");
        const auto isPlain = [&] {
            return sheet->questions().isEmpty() && sheet->imported().isEmpty() && sheet->canInitial() &&
                   !sheet->asksToConfirm() && sheet->needsReason().isEmpty();
        };
        show(isPlain, "55-plain");
        for (const auto& [doing, screen] : {std::pair("return", "56-return"), {"refile", "57-file-elsewhere"}}) {
            m_walk.put("checkedSheet", "doing", QString::fromLatin1(doing));
            m_walk.shoot(screen);
        }
        staff->amending()->begin();
        staff->amending()->mark(static_cast<int>(sheet::Skill::Cut), static_cast<int>(sheet::Mark::No));
        staff->amending()->mark(static_cast<int>(sheet::Skill::Camera), static_cast<int>(sheet::Mark::NotApplicable));
        m_walk.put("checkedSheet", "doing", QStringLiteral("amend"));
        m_walk.shoot("58-change");
        m_walk.put("checkedSheet", "doing", QString());
        staff->amending()->drop();
        sheet->initial({}, false);
        m_walk.shoot("59-undo");
        staff->pending()->undo();
    }

    void drawEvidence()
    {
        evidence_pages::EvidencePages* evidence = m_phone.evidence();
        m_walk.put("staffHome", "over", QStringLiteral("papers"));
        m_walk.shoot("67-papers");
        evidence->papers()->make(evidence_pages::Papers::Board);
        m_walk.shoot("67-paper-begun");
        m_walk.waitUntil([&] { return !evidence->papers()->busy(); });
        m_walk.shoot("67-paper-made");
        m_walk.put("staffHome", "over", QStringLiteral("confirm"));
        evidence->confirming()->draw(QStringLiteral("20270312"));
        m_walk.shoot("68-to-confirm");
        m_walk.put("confirmPage", "asking", 0);
        m_walk.shoot("68-confirming");
        m_walk.put("staffHome", "over", QStringLiteral("aside"));
        m_walk.shoot("69-nothing-aside");
        m_walk.put("staffHome", "over", QString());
    }

    void drawDirector()
    {
        m_phone.openDirectorDemo();
        m_walk.waitUntil([this] { return m_phone.stage() == Phone::Staff || !m_phone.error().isEmpty(); });
        if (m_phone.stage() != Phone::Staff) {
            m_walk.fail(m_phone.error());
            return;
        }
        m_phone.staffDesk()->finish();
        evidence_pages::Completion* completion = m_phone.evidence()->completion();
        completion->show(m_phone.staff()->board()->rows()->rows().front().id);
        m_walk.put("staffHome", "over", QStringLiteral("completion"));
        m_walk.shoot("45-cases-short");
        m_walk.put("completionPage", "doing", QStringLiteral("reason"));
        m_walk.shoot("46-why-complete");
        m_walk.put("completionPage", "reason", QStringLiteral("The site closed its rooms for a month."));
        m_walk.put("completionPage", "doing", QStringLiteral("readBack"));
        m_walk.shoot("47-what-is-signed");
        m_walk.put("completionPage", "doing", QString());
        completion->decide(QStringLiteral("The site closed its rooms for a month."));
        m_walk.shoot("48-complete-by-exception");
        completion->makeRecord(m_phone.demoProgramCode());
        m_walk.shoot("49-record-made");
        if (completion->made().isEmpty()) {
            m_walk.fail(completion->error());
        }
        m_phone.leaveDemo();
        m_walk.settle();
    }

private:
    ScreenWalk& m_walk;
    Phone& m_phone;
};

} // namespace

void drawStaff(ScreenWalk& walk, Phone& phone)
{
    StaffWalk staff(walk, phone);
    staff.drawInstructor();
    if (walk.error().isEmpty()) {
        staff.drawDirector();
    }
}

} // namespace peelpack::app
