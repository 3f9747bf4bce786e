#pragma once

#include "platform/demo/journal_world.h"

#include <functional>

namespace peelpack::demo {

/// How far the making is: what is done at the moment, how much of how much.
using JournalProgress = std::function<void(std::string_view what, std::size_t done, std::size_t of)>;

/// The program begins: vaults for everybody, the director's rules, instructors, signing cards, students.
void setUp(World& world, const catalogue::Catalogue& catalogue, const JournalProgress& progress);

/// The person's new device is invited, answers, and is granted by `inviter`; then `home` is in session and has taken in
/// what there is. A person who is known goes on where an older device was.
void admitInto(World& world, session::Session& inviter, Installation& home, const std::string& name, journal::Role role,
               const std::vector<std::string>& scopes, const std::optional<keys::Id>& person);

/// A new card for a preceptor, not yet vouched for.
Card& giveCard(World& world, Preceptor& preceptor, std::string pin);
/// Somebody of the staff says whose the newest card or the phone is.
void vouchFor(session::Session& staff, const Preceptor& preceptor);

} // namespace peelpack::demo
