#pragma once

#include <QByteArray>
#include <QString>

#include <cstddef>
#include <cstdint>
#include <utility>
#include <variant>
#include <vector>

/// What goes on paper, before anybody has said how wide the paper is.
namespace peelpack::print {

/// How a paragraph is set.
enum class Style : std::uint8_t { Title, Heading, Subheading, Body, Quiet };
inline constexpr std::size_t styleCount = 5;

struct Paragraph {
    Style style = Style::Body;
    QString text; ///< wrapped; line ends are kept
};

struct Column {
    QString title;
    int share = 1;      ///< of the width, beside those of the other columns
    bool right = false; ///< numbers stand at the right
};

/// Rows have a cell for each column. The titles are said again on every page.
struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<QString>> rows;
};

/// Tally strokes in fives: solid for first scrub, outlined otherwise, dots for what is still required.
struct Strokes {
    QString label;
    std::uint32_t placed = 0;
    std::uint32_t required = 0;
    bool firstScrub = false;
};

/// A QR code, and what it is.
struct Code {
    QByteArray bytes; ///< at most 1,000, so that it can be read off paper
    QString caption;
};

/// A line to be filled in with a pen.
struct Blank {
    QString label;
};

/// What follows begins on a new page.
struct NewPage {};

using Block = std::variant<Paragraph, Table, Strokes, Code, Blank, NewPage>;

struct Document {
    QString title; ///< also of the file
    std::vector<Block> blocks;

    void add(Style style, QString text) { blocks.emplace_back(Paragraph{style, std::move(text)}); }
};

} // namespace peelpack::print
