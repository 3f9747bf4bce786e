#include "core/record/sheet_fold.h"

#include <algorithm>
#include <utility>

namespace peelpack::record {

using sheet::Mark;
using sheet::Skill;
using sheet::Strength;

namespace {

/// Drawn and paper are equally weak; a signer who cannot be told is the weakest.
int weakness(Strength strength)
{
    switch (strength) {
    case Strength::OwnPhone:
        return 0;
    case Strength::Card:
        return 1;
    case Strength::CardNew:
        return 2;
    case Strength::Drawn:
    case Strength::Paper:
        return 3;
    case Strength::None:
        return 4;
    }
    return 4;
}

/// `choices` are ascending by procedure, and stay so.
void setChoices(std::vector<Choice>& choices, const std::vector<Choice>& filed)
{
    for (const Choice& choice : filed) {
        const auto place =
            std::lower_bound(choices.begin(), choices.end(), choice.procedure,
                             [](const Choice& one, std::uint8_t procedure) { return one.procedure < procedure; });
        if (place != choices.end() && place->procedure == choice.procedure) {
            *place = choice;
        } else {
            choices.insert(place, choice);
        }
    }
}

void dropChoicesOutOfRange(Content& content)
{
    std::erase_if(content.choices, [&](const Choice& choice) { return choice.procedure >= content.procedures.size(); });
}

} // namespace

SheetFold::SheetFold(const base::Id& id, const SheetEvents& events, SheetRecord& record)
    : m_events(events), m_sights(sightsOf(events)), m_record(record)
{
    m_record.id = id;
    for (std::size_t i = 0; i < events.acts.size(); ++i) {
        if (events.acts[i]->standing.counts() && events.act(i).inForce) {
            m_walk.push_back({events.acts[i], &events.act(i), m_sights[i], events.sawImportOnly(events.act(i))});
        }
    }
}

void SheetFold::fold()
{
    takeImport();
    findWithoutEffect();
    takeWithdrawal();
    m_record.history = historyOf(m_events, m_sights, m_without); // before the signers take over what they said
    if (!m_record.imported) {
        takeSigners();
        takeContent();
        takeChoices();
    }
    applyActs();
    if (!m_record.imported) {
        takeStrength();
        takeUnsignedVersion();
        takeReviews();
        takeHandOvers();
    }
    takeStanding();
}

const Draft* SheetFold::draftAt(std::size_t index) const
{
    if (const auto* opened = counting<Opened>(index)) {
        return &opened->draft;
    }
    const auto* changed = counting<HeadChanged>(index);
    return changed == nullptr ? nullptr : &changed->draft;
}

std::optional<SheetFold::PlacedDraft> SheetFold::newestDraft(bool inEffectOnly) const
{
    for (std::size_t i = m_events.student.size(); i-- > 0;) {
        const Draft* draft = inEffectOnly && m_without.afterInitial[i] ? nullptr : draftAt(i);
        if (draft != nullptr) {
            return PlacedDraft{i, draft};
        }
    }
    return std::nullopt;
}

/// What the student wrote after what the writer of an initial or void in force saw changes nothing.
void SheetFold::findWithoutEffect()
{
    m_without.afterInitial.assign(m_events.student.size(), false);
    m_without.requestOnly.assign(m_events.student.size(), false);
    const bool freezes = end<Initial>() != nullptr || end<Void>() != nullptr;
    if (!freezes || m_record.imported || !(m_walk.back().seen || m_walk.back().sawImportOnly)) {
        return;
    }
    for (std::size_t i = m_walk.back().seen ? *m_walk.back().seen + 1 : 0; i < m_events.student.size(); ++i) {
        m_without.afterInitial[i] =
            draftAt(i) != nullptr || counting<Logged>(i) != nullptr || counting<Attested>(i) != nullptr;
        m_record.changedAfterInitial = m_record.changedAfterInitial || m_without.afterInitial[i];
    }
}

bool SheetFold::confirmedBy(std::size_t index) const
{
    return std::any_of(m_walk.begin(), m_walk.end(), [&](const Step& step) {
        const auto* initial = step.as<Initial>();
        return initial != nullptr && initial->confirmed && step.hasSeen(index);
    });
}

void SheetFold::takeSigners()
{
    for (std::size_t i = 0; i < m_events.student.size(); ++i) {
        if (counting<Attested>(i) == nullptr) {
            continue;
        }
        m_signerPlaces.push_back(i);
        Event& event = *m_events.student[i];
        Signer& signer = m_record.signers.emplace_back();
        signer.entry = event.entry;
        signer.statement = std::move(std::get<Attested>(event.what));
        signer.confirmed = confirmedBy(i);
        signer.afterInitial = m_without.afterInitial[i];
        const Attested& first = m_record.signers.front().statement;
        signer.otherContent = signer.statement.procedures != first.procedures || signer.statement.head != first.head;
        if (!signer.afterInitial && !signer.statement.feedback.empty()) {
            m_record.feedback.push_back({signer.statement.name, signer.statement.feedback});
        }
    }
}

/// What the first signer signed, with the marks of all; where nobody signed, the student's draft.
void SheetFold::takeContent()
{
    if (m_record.isSigned()) {
        const Attested& first = m_record.signers.front().statement; // those without effect come after the others
        m_record.operation = first.operation;
        m_record.content.procedures = first.procedures;
        m_record.content.head = first.head;
        joinMarks();
    } else if (const auto draft = newestDraft(true)) {
        m_record.operation = draft->draft->operation;
        m_record.content.procedures = draft->draft->procedures;
        m_record.content.head = draft->draft->head;
        m_record.content.marks = draft->draft->marks;
    }
}

void SheetFold::joinMarks()
{
    for (const Skill skill : sheet::allSkills) {
        Mark first = Mark::Unmarked;
        bool differ = false;
        const std::string* reason = nullptr;
        for (const Signer& signer : m_record.signers) {
            const Mark mark = signer.afterInitial ? Mark::Unmarked : signer.statement.marks.marks.of(skill);
            if (mark == Mark::Unmarked) {
                continue;
            }
            first = first == Mark::Unmarked ? mark : first;
            differ = differ || mark != first;
            if (reason == nullptr || reason->empty()) {
                reason = &signer.statement.marks.reason(skill);
            }
        }
        if (differ) {
            m_record.content.marks.set(skill, Mark::No);
            m_record.disputed.push_back(disputedMark(skill));
        } else if (first != Mark::Unmarked) {
            m_record.content.marks.set(skill, first, *reason);
        }
    }
}

DisputedMark SheetFold::disputedMark(Skill skill) const
{
    DisputedMark disputed{skill, {}, false};
    for (const Signer& signer : m_record.signers) {
        const Mark mark = signer.statement.marks.marks.of(skill);
        if (!signer.afterInitial && mark != Mark::Unmarked) {
            disputed.given.push_back({signer.statement.name, mark});
        }
    }
    return disputed;
}

void SheetFold::takeChoices()
{
    for (std::size_t i = m_events.student.size(); i-- > 0;) {
        const auto* logged = m_without.afterInitial[i] ? nullptr : counting<Logged>(i);
        if (logged != nullptr) {
            setChoices(m_record.content.choices, logged->choices);
            return;
        }
    }
}

/// What instructors changed replaces what was signed and logged, whatever the student wrote since.
void SheetFold::applyActs()
{
    if (m_walk.empty()) {
        dropChoicesOutOfRange(m_record.content);
        return;
    }
    Content changed = m_record.content;
    sheet::SkillSet ruled;
    for (const Step& step : m_walk) {
        if (m_record.imported && changesMarks(*step.act)) {
            continue;
        }
        if (const auto* amend = step.as<Amend>()) {
            changed.marks.overlay(amend->marks);
            changed.head = amend->head.value_or(changed.head);
            changed.procedures = amend->procedures.empty() ? changed.procedures : amend->procedures;
            for (const Skill skill : sheet::allSkills) {
                if (amend->marks.marks.of(skill) != Mark::Unmarked) {
                    ruled.add(skill);
                }
            }
        } else if (const auto* accepted = step.as<ReviewAccepted>()) {
            changed.marks.set(accepted->skill, accepted->mark);
            ruled.add(accepted->skill);
        } else if (const auto* refile = step.as<Refile>()) {
            setChoices(changed.choices, refile->choices);
        }
    }
    dropChoicesOutOfRange(m_record.content);
    dropChoicesOutOfRange(changed);
    if (changed != m_record.content) {
        m_record.original = std::exchange(m_record.content, std::move(changed));
    }
    for (DisputedMark& disputed : m_record.disputed) {
        disputed.settled = ruled.contains(disputed.skill);
    }
}

void SheetFold::takeStrength()
{
    const std::vector<const Signer*> contributors = m_record.contributors();
    const auto weakest =
        std::max_element(contributors.begin(), contributors.end(), [](const Signer* a, const Signer* b) {
            return weakness(a->statement.strength) < weakness(b->statement.strength);
        });
    if (weakest != contributors.end()) {
        m_record.strength = (*weakest)->statement.strength;
    }
}

/// Somebody signed these procedures and this head, and every mark of the draft is one that a signer gave.
bool SheetFold::isSignedAs(const Draft& draft) const
{
    const auto& signers = m_record.signers;
    const bool head = std::any_of(signers.begin(), signers.end(), [&](const Signer& signer) {
        return signer.statement.procedures == draft.procedures && signer.statement.head == draft.head;
    });
    return head && std::all_of(sheet::allSkills.begin(), sheet::allSkills.end(), [&](Skill skill) {
               const Mark mark = draft.marks.marks.of(skill);
               return mark == Mark::Unmarked || std::any_of(signers.begin(), signers.end(), [&](const Signer& signer) {
                          return signer.statement.marks.marks.of(skill) == mark;
                      });
           });
}

void SheetFold::takeUnsignedVersion()
{
    const auto newest = newestDraft(false);
    if (!newest) {
        return;
    }
    bool differs = false;
    if (m_record.isSigned()) {
        differs = newest->index > m_signerPlaces.front() && !isSignedAs(*newest->draft);
    } else if (m_without.afterInitial[newest->index]) {
        const auto inEffect = newestDraft(true);
        differs = !inEffect || *inEffect->draft != *newest->draft;
    }
    if (differs) {
        m_record.unsignedVersion = {m_events.student[newest->index]->entry, *newest->draft};
    }
}

void SheetFold::takeWithdrawal()
{
    for (std::size_t i = 0; i < m_events.student.size(); ++i) {
        const auto* withdrawn = counting<Withdrawn>(i);
        if (withdrawn == nullptr) {
            continue;
        }
        // What stood when the student wrote it: the last act whose writer had not seen it yet.
        const auto before =
            std::find_if(m_walk.rbegin(), m_walk.rend(), [&](const Step& step) { return !step.hasSeen(i); });
        const bool requestOnly = before != m_walk.rend() && before->as<Initial>() != nullptr;
        m_without.requestOnly[i] = requestOnly;
        if (!m_record.withdrawal || !m_record.withdrawal->stands) {
            const bool answered = requestOnly && std::any_of(m_walk.begin(), m_walk.end(),
                                                             [&](const Step& step) { return step.hasSeen(i); });
            m_record.withdrawal = {m_events.student[i]->entry, withdrawn->reason, !requestOnly, answered};
        }
    }
}

Review SheetFold::reviewOf(std::size_t index, const ReviewAsked& asked) const
{
    const Event& request = *m_events.student[index];
    Review review{request.entry, asked, request.claimed, Review::Answer::Pending, {}, {}};
    const auto answer = [&](Review::Answer given, const Step& step) {
        review.answer = given;
        review.answeredBy = step.event->writer.name;
        review.reason = step.act->reason;
    };
    const Step* declining = nullptr;
    for (const Step& step : m_walk) {
        const auto* accepted = step.as<ReviewAccepted>();
        if (accepted != nullptr && accepted->request == request.entry) {
            answer(Review::Answer::Accepted, step);
            return review;
        }
        // The acceptance of another request is the answer to this one only if nothing else is.
        const bool better = declining == nullptr || (declining->as<ReviewAccepted>() != nullptr && accepted == nullptr);
        if (step.hasSeen(index) && better) {
            declining = &step;
        }
    }
    if (declining != nullptr) {
        answer(Review::Answer::Declined, *declining);
    }
    return review;
}

void SheetFold::takeReviews()
{
    for (std::size_t i = 0; i < m_events.student.size(); ++i) {
        if (const auto* asked = counting<ReviewAsked>(i)) {
            m_record.reviews.push_back(reviewOf(i, *asked));
        }
    }
}

void SheetFold::takeHandOvers()
{
    for (std::size_t i = 0; i < m_events.student.size(); ++i) {
        if (const auto* ended = counting<HandOverEnded>(i)) {
            m_record.handOversEnded.push_back(*ended);
        }
    }
}

void SheetFold::takeStanding()
{
    const SheetStanding untouched = m_record.imported ? SheetStanding::Imported : SheetStanding::Open;
    m_record.standing = m_record.isSigned() ? SheetStanding::Signed : untouched;
    if (!m_walk.empty()) {
        const Step& last = m_walk.back();
        if (end<Initial>() != nullptr) {
            m_record.standing = SheetStanding::Initialed;
        } else if (end<Void>() != nullptr) {
            m_record.standing = SheetStanding::Void;
        } else if (end<Return>() != nullptr) {
            bool answered = false;
            for (std::size_t i = last.seen ? *last.seen + 1 : m_events.student.size(); i < m_events.student.size();
                 ++i) {
                answered = answered || (counts(i) && !m_record.imported);
            }
            m_record.returned = {last.event->writer, last.act->reason, answered};
            m_record.standing = answered ? m_record.standing : SheetStanding::Returned;
        } else {
            m_record.standing = SheetStanding::Amended;
        }
    }
    if (m_record.withdrawal && m_record.withdrawal->stands && m_record.standing != SheetStanding::Void) {
        m_record.standing = SheetStanding::Withdrawn;
    }
    if (m_record.standing == SheetStanding::Initialed) {
        const Event& event = *m_walk.back().event;
        const auto theirs = [&](const Signer& signer) {
            return signer.afterInitial || signer.statement.person == event.writer.person;
        };
        const bool only = m_record.isSigned() && std::all_of(m_record.signers.begin(), m_record.signers.end(), theirs);
        m_record.initial = {event.writer, event.claimed, only};
    }
}

} // namespace peelpack::record
