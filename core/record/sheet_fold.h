#pragma once

#include "core/record/history.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace peelpack::record {

/// Turns the events of one sheet into its record. Lives for one call; the events must outlive it, and what they hold
/// goes over into the record.
class SheetFold {
public:
    /// `record` is a new one.
    SheetFold(const base::Id& id, const SheetEvents& events, SheetRecord& record);

    /// Call once.
    void fold();

private:
    /// An act in force, first to last.
    struct Step {
        const Event* event = nullptr;
        const Act* act = nullptr;
        std::optional<std::size_t> seen; ///< index into the student's events
        bool sawImportOnly = false;      ///< and none of those

        [[nodiscard]] bool hasSeen(std::size_t index) const { return seen && *seen >= index; }
        template <class Kind>
        [[nodiscard]] const Kind* as() const
        {
            return std::get_if<Kind>(&act->decision);
        }
    };
    struct PlacedDraft {
        std::size_t index = 0;
        const Draft* draft = nullptr;
    };

    [[nodiscard]] bool counts(std::size_t index) const { return m_events.student[index]->standing.counts(); }
    template <class Kind>
    [[nodiscard]] const Kind* counting(std::size_t index) const
    {
        return counts(index) ? std::get_if<Kind>(&m_events.student[index]->what) : nullptr;
    }
    [[nodiscard]] const Draft* draftAt(std::size_t index) const;
    /// The newest draft that counts, of those in effect or of all.
    [[nodiscard]] std::optional<PlacedDraft> newestDraft(bool inEffectOnly) const;
    [[nodiscard]] bool confirmedBy(std::size_t index) const;
    template <class Kind>
    [[nodiscard]] const Kind* end() const
    {
        return m_walk.empty() ? nullptr : m_walk.back().as<Kind>();
    }

    /// Which import is in effect, if any.
    void takeImport();
    void findWithoutEffect();
    void takeSigners();
    void takeContent();
    void joinMarks();
    [[nodiscard]] DisputedMark disputedMark(sheet::Skill skill) const;
    void takeChoices();
    void applyActs();
    void takeStrength();
    void takeUnsignedVersion();
    void takeWithdrawal();
    void takeReviews();
    void takeHandOvers();
    void takeStanding();
    [[nodiscard]] Review reviewOf(std::size_t index, const ReviewAsked& asked) const;
    [[nodiscard]] bool isSignedAs(const Draft& draft) const;

    const SheetEvents& m_events;
    Sights m_sights;
    std::vector<Step> m_walk;
    WithoutEffect m_without;
    std::vector<std::size_t> m_signerPlaces; ///< of the record's signers, into the student's events
    SheetRecord& m_record;
};

} // namespace peelpack::record
