#pragma once

#include "platform/demo/journal_world.h"

/// What goes wrong in the invented program, each once, and with whom.
namespace peelpack::demo {

namespace trouble {
inline constexpr std::string_view forked = "Wyatt Ferro";       ///< a restored phone wrote a second history
inline constexpr std::string_view lostPhone = "Rosa Quintero";  ///< revoked, replaced, and used once more
inline constexpr std::string_view revokedCard = "Silas Brandt"; ///< signed with a card that was revoked the day before
inline constexpr std::string_view contradiction = "Kofi Ansah"; ///< initialed by one instructor, returned by another
inline constexpr std::string_view wrongPins = "Bram Oduya";     ///< three wrong PINs in a hand-over
inline constexpr std::string_view unknownCard = "Greta Solis";  ///< signed with a card that nobody vouches for
inline constexpr std::string_view neverSent = "Noor Haddad";    ///< sends nothing after week 10
inline constexpr std::string_view late[] = {"Emil Novak", "Yara Costa"}; ///< two sheets each, opened five weeks late
inline constexpr std::size_t lateSheets = 2;
inline constexpr std::size_t wrongTries = 3;
/// Of the preceptors: whose card was lost and replaced, and who has a card that nobody vouches for.
inline constexpr std::size_t losesCard = 6;
inline constexpr std::size_t usualPreceptor = 3; ///< of the other stories; has a card
inline constexpr std::string_view newcomer = "S. Lindgaard";
} // namespace trouble

/// Changes the invented cases as the stories need it.
void prepareTroubles(World& world);

/// Opens a sheet of Thursday, Friday morning; it is the last of the student's cases.
DemoCase& tell(World& world, Student& student, std::size_t week, std::size_t preceptor = trouble::usualPreceptor);

/// What goes wrong in a week, in this order: before the parcels of Friday noon, when they are taken in, and on Saturday
/// afternoon. The first answers who has something to send because of it.
std::vector<std::string> troublesBeforeParcels(World& world, std::size_t week);
void troublesWithParcels(World& world, std::size_t week);
void troublesAfterParcels(World& world, std::size_t week);

} // namespace peelpack::demo
