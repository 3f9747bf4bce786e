#pragma once

#include "core/base/result.h"
#include "core/record/sheet_record.h"
#include "core/role/classifier.h"
#include "platform/session/session.h"

#include <map>
#include <span>
#include <utility>
#include <vector>

namespace peelpack::session {

/// Which sheets of different students seem to be of one operation, as it shows over everybody's sheets and not on any
/// of them. Worked out once, for many decisions; the sheets themselves are not kept. Void, withdrawn and canceled ones
/// are left out. Empty: nobody shares anything.
class SharedSheets {
public:
    struct Key {
        base::Id student;
        base::Id sheet;
        auto operator<=>(const Key&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
    };

    SharedSheets() = default;
    /// A student's sheets, lent, and how their marks become roles.
    struct Of {
        const record::StudentRecord* record;
        role::RoleRules roles;
    };
    explicit SharedSheets(std::span<const Of> students);
    /// Of all students whose sheets are here; works on several threads while it lasts.
    static SharedSheets of(const Session& session);

    /// The sheets of other students that seem to be of the operation of this one.
    [[nodiscard]] const std::vector<Key>& with(const Key& sheet) const;
    /// Another student's signed sheet of the same operation is first scrub by its marks.
    [[nodiscard]] bool hasFirstScrubBeside(const Key& sheet) const;

private:
    std::map<Key, std::vector<Key>> m_with;
    std::map<Key, bool> m_firstScrub; ///< of those that share an operation
};

} // namespace peelpack::session
