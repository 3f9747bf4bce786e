#pragma once

#include "core/record/sheet_record.h"

#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

/// Builders for records: an invented student, preceptor and instructors.
namespace peelpack::support {

/// Equal bytes.
template <class Name>
Name named(std::uint8_t byte)
{
    Name name;
    name.bytes.fill(byte);
    return name;
}

inline const record::Standing aside{record::Standing::Verdict::Aside, "Nobody granted it."};
inline const record::Standing refused{record::Standing::Verdict::Refused, "Not allowed."};

base::EntryHash entry(std::uint8_t byte);
record::ReasonedMarks marksOf(std::initializer_list<std::pair<sheet::Skill, sheet::Mark>> list);
record::ReasonedMarks allYes();
/// March 1, room 4.
record::Head head(std::string room = "4");
record::Draft draft(std::vector<std::string> procedures = {"Appendectomy"}, const record::ReasonedMarks& marks = {},
                    const record::Head& where = head());
/// Of an appendectomy in room 4.
record::Attested attested(const record::ReasonedMarks& marks, sheet::Strength strength = sheet::Strength::Card,
                          std::string name = "Invented Preceptor", std::uint8_t person = 0x40);

/// An appendectomy of March 1 as first scrub, filed as general.
record::Imported imported(sheet::Role role = sheet::Role::First);

/// Events of one student; entries are hashed 1, 2, 3 ... as they are added.
class Story {
public:
    base::Id sheet = named<base::Id>(0x51); ///< that the next events are about
    record::StudentEvents events{named<base::Id>(0x30), "Invented Student", {}};

    base::EntryHash student(record::What what, record::Standing standing = {});
    /// By an instructor, from a paper log.
    base::EntryHash imported(record::Imported what, record::Standing standing = {});
    /// In force, standing on the last one in force.
    base::EntryHash act(record::Decision decision, const base::EntryHash& about, std::string reason = {},
                        std::uint8_t person = 0x20);
    /// By the second instructor, not in force.
    base::EntryHash beside(record::Decision decision, const base::EntryHash& standsOn, const base::EntryHash& about,
                           record::Standing standing = {});

    /// Of the sheet at hand; fails the test when there is none.
    [[nodiscard]] record::SheetRecord record() const;

private:
    base::EntryHash add(record::Writer writer, record::What what, record::Standing standing);

    std::uint8_t m_next = 1;
    base::EntryHash m_last;
};

/// The line of an entry; fails the test when there is none.
const record::HistoryLine& lineOf(const record::SheetRecord& record, const base::EntryHash& entry);
/// The entries of the history by their numbers.
std::vector<std::uint8_t> orderOf(const record::SheetRecord& record);

} // namespace peelpack::support
