#pragma once

#include <array>
#include <string_view>

/// Everybody and every place of the invented program. None of them exists.
namespace peelpack::demo {

inline constexpr std::array springStudents = std::to_array<std::string_view>(
    {"Ines Duarte", "Tomas Lindqvist", "Priya Raman", "Caleb Nwosu", "Hana Sato", "Marisol Vega", "Owen Hartley",
     "Leila Farahani", "Jonas Weir", "Amara Okoye", "Noor Haddad", "Silas Brandt", "Mei Tanaka", "Rosa Quintero"});
inline constexpr std::array fallStudents =
    std::to_array<std::string_view>({"Dario Lund", "Freya Molina", "Kofi Ansah", "Greta Solis", "Emil Novak",
                                     "Talia Reyes", "Bram Oduya", "Yara Costa", "Wyatt Ferro", "Ilse Marchetti"});
/// In the program on vaults only.
inline constexpr std::array moreSpringStudents = std::to_array<std::string_view>(
    {"Bastian Rourke", "Carmen Ilves", "Desta Holloway", "Ewa Trujillo", "Finn Abara", "Gia Petersen"});
inline constexpr std::array moreFallStudents =
    std::to_array<std::string_view>({"Hugo Lanting", "Imani Castellow", "Jasper Quon", "Kaya Lindholm", "Lior Venter",
                                     "Maren Osgood", "Nils Ferreday", "Odalys Kemp", "Pavel Strome", "Quinn Ibarra"});

inline constexpr std::array sites =
    std::to_array<std::string_view>({"North Campus", "Harbor Pavilion", "Mill Street Surgery"});
inline constexpr std::array surgeons = std::to_array<std::string_view>(
    {"Dr Okafor", "Dr Adeyemi", "Dr Meyer-Lund", "Dr Castellan", "Dr Iversen", "Dr Bose", "Dr Halloran", "Dr Petrov"});
inline constexpr std::array preceptors =
    std::to_array<std::string_view>({"L. Brandt", "T. Osei", "M. Varga", "K. Ellery", "J. Pruitt"});
inline constexpr std::array remarks = std::to_array<std::string_view>(
    {"Had the mesh on the field before it was asked for.", "Call the closing count yourself next time.",
     "Good anticipation.", "Watch the back table when you turn.", "Loaded the needle driver ahead of the surgeon.",
     "Ask for the preference card the evening before."});

} // namespace peelpack::demo
