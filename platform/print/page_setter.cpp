#include "platform/print/page_setter.h"

#include <QTextLayout>
#include <qrcodegen/qrcodegen.hpp>

#include <algorithm>
#include <cmath>

namespace peelpack::print {
namespace {

// In points.
constexpr double frameHeight = 30;
constexpr double afterBlock = 6;
constexpr double beforeHeading = 10;
constexpr double cellGap = 6;
constexpr double rowGap = 3;
constexpr double hairline = 0.5;
constexpr double strokeHeight = 11;
constexpr double strokeStep = 4;
constexpr double strokeWidth = 1.6;
constexpr double fiveGap = 5;
constexpr double codeSide = 100;
constexpr double blankHeight = 24;

constexpr int fives = 5;

double pointsOf(Style style)
{
    switch (style) {
    case Style::Title:
        return 18;
    case Style::Heading:
        return 13;
    case Style::Subheading:
        return 10.5;
    case Style::Body:
        return 9;
    case Style::Quiet:
        return 8;
    }
    return 9;
}

bool isHeading(Style style)
{
    return style == Style::Title || style == Style::Heading || style == Style::Subheading;
}

double strokesWidth(std::uint32_t count)
{
    const std::uint32_t whole = count / fives;
    return count * strokeStep + whole * fiveGap;
}

} // namespace

PageSetter::PageSetter(QPaintDevice& device, const PageGeometry& geometry, const PageFrame& frame)
    : m_device(device), m_geometry(geometry),
      m_frame(frame), m_faces{faceOf(Style::Title, device), faceOf(Style::Heading, device),
                              faceOf(Style::Subheading, device), faceOf(Style::Body, device),
                              faceOf(Style::Quiet, device)}
{
}

PageSetter::Face PageSetter::faceOf(Style style, QPaintDevice& device)
{
    QFont font(QStringLiteral("Inter"));
    font.setPointSizeF(pointsOf(style));
    font.setWeight(isHeading(style) ? QFont::DemiBold : QFont::Normal);
    font.setStyleStrategy(QFont::PreferNoShaping); // shaped hyphens and dashes cannot be read back out of a PDF
    return {font, QFontMetricsF(font, &device)};
}

std::vector<QString> PageSetter::broken(const QString& text, Style style, double width) const
{
    std::vector<QString> lines;
    for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
        if (widthOf(paragraph, style) <= width) {
            lines.push_back(paragraph);
            continue;
        }
        QTextLayout layout(paragraph, face(style).font, &m_device);
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            lines.push_back(paragraph.mid(line.textStart(), line.textLength()).trimmed());
        }
        layout.endLayout();
    }
    return lines;
}

double PageSetter::bottom() const
{
    return m_geometry.height - points(frameHeight);
}

bool PageSetter::pageIsEmpty() const
{
    return m_set.pages.back().lines.empty() && m_set.pages.back().shapes.empty();
}

void PageSetter::newPage()
{
    m_set.pages.emplace_back();
    m_y = 0;
}

void PageSetter::ensure(double height)
{
    if (m_y + height > bottom() && !pageIsEmpty()) {
        newPage();
    }
}

void PageSetter::addShape(SetShape::Kind kind, double x, double width)
{
    m_set.pages.back().shapes.push_back({kind, x, m_y, width, m_block});
}

void PageSetter::writeLines(const std::vector<QString>& lines, Style style, double x)
{
    for (const QString& line : lines) {
        ensure(lineHeight(style));
        m_set.pages.back().lines.push_back({x, m_y + ascent(style), style, line});
        m_y += lineHeight(style);
    }
}

SetDocument PageSetter::set(const Document& document)
{
    m_set = SetDocument{&document, std::vector<SetPage>(1)};
    m_y = 0;
    for (m_block = 0; m_block < document.blocks.size(); ++m_block) {
        std::visit([this](const auto& block) { setBlock(block); }, document.blocks[m_block]);
    }
    return std::move(m_set);
}

void PageSetter::setBlock(const Paragraph& paragraph)
{
    if (isHeading(paragraph.style)) {
        constexpr int linesAfter = 4; // a heading does not stand alone at the foot of a page
        if (!pageIsEmpty()) {
            m_y += points(beforeHeading);
        }
        ensure(lineHeight(paragraph.style) + linesAfter * lineHeight(Style::Body));
    }
    writeLines(broken(paragraph.text, paragraph.style, m_geometry.width), paragraph.style, 0);
    m_y += points(afterBlock);
}

/// Where the columns of a table are.
struct PageSetter::TableState {
    std::vector<double> left;
    std::vector<double> width;
    std::vector<std::vector<QString>> titles; ///< lines of each column's title
    std::vector<bool> right;
    double titlesHeight = 0;
};

void PageSetter::setTitles(const TableState& state)
{
    const double top = m_y;
    for (std::size_t column = 0; column < state.titles.size(); ++column) {
        double y = top;
        for (const QString& line : state.titles[column]) {
            const double shift = state.right[column] ? state.width[column] - widthOf(line, Style::Quiet) : 0;
            m_set.pages.back().lines.push_back(
                {state.left[column] + shift, y + ascent(Style::Quiet), Style::Quiet, line});
            y += lineHeight(Style::Quiet);
        }
    }
    m_y = top + state.titlesHeight;
    addShape(SetShape::Kind::Rule, 0, m_geometry.width);
    m_y += points(rowGap);
}

void PageSetter::setBlock(const Table& table)
{
    TableState state;
    int shares = 0;
    for (const Column& column : table.columns) {
        shares += column.share;
    }
    double left = 0;
    std::size_t titleLines = 0;
    for (const Column& column : table.columns) {
        const double width = m_geometry.width * column.share / std::max(shares, 1);
        state.left.push_back(left);
        state.width.push_back(width - points(cellGap));
        state.right.push_back(column.right);
        state.titles.push_back(broken(column.title, Style::Quiet, state.width.back()));
        titleLines = std::max(titleLines, state.titles.back().size());
        left += width;
    }
    state.titlesHeight = static_cast<double>(titleLines) * lineHeight(Style::Quiet) + points(rowGap);
    const double height = lineHeight(Style::Body);
    ensure(state.titlesHeight + 2 * height);
    setTitles(state);
    for (const std::vector<QString>& row : table.rows) {
        std::vector<std::vector<QString>> cells;
        std::size_t lines = 1;
        for (std::size_t column = 0; column < table.columns.size(); ++column) {
            cells.push_back(broken(row.at(column), Style::Body, state.width[column]));
            lines = std::max(lines, cells.back().size());
        }
        const double whole = static_cast<double>(lines) * height;
        const double room = bottom() - state.titlesHeight - points(rowGap);
        if (m_y + whole > bottom() && whole <= room) {
            newPage();
            setTitles(state);
        }
        for (std::size_t line = 0; line < lines; ++line) {
            if (m_y + height > bottom()) { // a row that is higher than a page goes on on the next
                newPage();
                setTitles(state);
            }
            for (std::size_t column = 0; column < cells.size(); ++column) {
                if (line < cells[column].size() && !cells[column][line].isEmpty()) {
                    const QString& text = cells[column][line];
                    const double shift = state.right[column] ? state.width[column] - widthOf(text, Style::Body) : 0;
                    m_set.pages.back().lines.push_back(
                        {state.left[column] + shift, m_y + ascent(Style::Body), Style::Body, text});
                }
            }
            m_y += height;
        }
        m_y += points(rowGap);
    }
    m_y += points(afterBlock);
}

void PageSetter::setBlock(const Strokes& strokes)
{
    const std::vector<QString> label =
        broken(strokes.label + QStringLiteral(": %1 of %2").arg(strokes.placed).arg(strokes.required), Style::Body,
               m_geometry.width);
    // As many lines of strokes as it takes, whole fives in each.
    const double five = points(strokesWidth(fives));
    const auto fivesInLine = std::max<std::uint32_t>(1, static_cast<std::uint32_t>(m_geometry.width / five));
    const std::uint32_t most = std::max(strokes.placed, strokes.required);
    const std::uint32_t lines = std::max<std::uint32_t>(1, (most + fivesInLine * fives - 1) / (fivesInLine * fives));
    const double high = lines * points(strokeHeight + rowGap);
    ensure(static_cast<double>(label.size()) * lineHeight(Style::Body) + std::min(high, bottom() / 2));
    writeLines(label, Style::Body, 0);
    addShape(SetShape::Kind::Strokes, 0, fivesInLine * five);
    m_y += high + points(afterBlock);
}

void PageSetter::setBlock(const Code& code)
{
    ensure(points(codeSide));
    const double top = m_y;
    addShape(SetShape::Kind::Code, 0, points(codeSide));
    const double left = points(codeSide + cellGap * 2);
    writeLines(broken(code.caption, Style::Quiet, m_geometry.width - left), Style::Quiet, left);
    m_y = std::max(m_y, top + points(codeSide)) + points(afterBlock);
}

void PageSetter::setBlock(const Blank& blank)
{
    ensure(points(blankHeight));
    m_y += points(blankHeight) - lineHeight(Style::Body);
    const double width = widthOf(blank.label, Style::Body);
    writeLines({blank.label}, Style::Body, 0);
    addShape(SetShape::Kind::Blank, width + points(cellGap), m_geometry.width - width - points(cellGap));
    m_y += points(rowGap);
}

void PageSetter::setBlock(const NewPage& /*page*/)
{
    if (!pageIsEmpty()) {
        newPage();
    }
}

void PageSetter::drawStrokes(const Strokes& strokes, const SetShape& shape, QPainter& painter) const
{
    const double five = points(strokesWidth(fives));
    const auto inLine = static_cast<std::uint32_t>(std::max(1L, std::lround(shape.width / five))) * fives;
    for (std::uint32_t i = 0; i < std::max(strokes.placed, strokes.required); ++i) {
        const std::uint32_t place = i % inLine;
        const double x = shape.x + points(strokesWidth(place - place % fives) + (place % fives) * strokeStep);
        const std::uint32_t line = i / inLine;
        const double y = shape.y + line * points(strokeHeight + rowGap);
        const double height = points(strokeHeight);
        if (i >= strokes.placed) {
            painter.fillRect(QRectF(x, y + height - points(strokeWidth), points(strokeWidth), points(strokeWidth)),
                             Qt::gray);
        } else if (place % fives == fives - 1) { // the fifth crosses the four
            const QPen pen(Qt::black, strokes.firstScrub ? points(strokeWidth) : points(hairline));
            painter.setPen(pen);
            painter.drawLine(QPointF(x, y), QPointF(x - (fives - 1) * points(strokeStep), y + height));
        } else if (strokes.firstScrub) {
            painter.fillRect(QRectF(x, y, points(strokeWidth), height), Qt::black);
        } else {
            painter.setPen(QPen(Qt::black, points(hairline)));
            painter.drawRect(QRectF(x, y, points(strokeWidth), height));
        }
    }
}

void PageSetter::drawCode(const Code& code, const SetShape& shape, QPainter& painter) const
{
    const qrcodegen::QrCode modules =
        qrcodegen::QrCode::encodeBinary({code.bytes.begin(), code.bytes.end()}, qrcodegen::QrCode::Ecc::MEDIUM);
    const double module = shape.width / modules.getSize();
    for (int y = 0; y < modules.getSize(); ++y) {
        for (int x = 0; x < modules.getSize(); ++x) {
            if (modules.getModule(x, y)) {
                painter.fillRect(QRectF(shape.x + x * module, shape.y + y * module, module, module), Qt::black);
            }
        }
    }
}

void PageSetter::drawFrame(std::size_t page, std::size_t pages, QPainter& painter) const
{
    const double top = bottom() + points(rowGap);
    painter.fillRect(QRectF(0, top, m_geometry.width, points(hairline)), Qt::gray);
    const QFontMetricsF& metrics = face(Style::Quiet).metrics;
    const double first = top + points(rowGap) + metrics.ascent();
    painter.setFont(face(Style::Quiet).font);
    painter.setPen(Qt::black);
    const QString count = QStringLiteral("Page %1 of %2").arg(page + 1).arg(pages);
    const double countWidth = metrics.horizontalAdvance(count);
    const QString left = m_frame.program + QStringLiteral("  ·  ") + m_frame.date;
    painter.drawText(QPointF(0, first),
                     metrics.elidedText(left, Qt::ElideRight, m_geometry.width - countWidth - points(cellGap)));
    painter.drawText(QPointF(m_geometry.width - countWidth, first), count);
    painter.drawText(QPointF(0, first + metrics.lineSpacing()),
                     QStringLiteral("The program's director decides which requirements are in force and who has met "
                                    "them. Not de-identified: keep it as an education record."));
}

void PageSetter::draw(const SetDocument& set, std::size_t page, QPainter& painter) const
{
    const SetPage& content = set.pages[page];
    painter.setPen(Qt::black);
    Style style = Style::Body;
    painter.setFont(face(style).font);
    for (const SetLine& line : content.lines) {
        if (line.style != style) {
            style = line.style;
            painter.setFont(face(style).font);
        }
        painter.drawText(QPointF(line.x, line.baseline), line.text);
    }
    for (const SetShape& shape : content.shapes) {
        const Block& block = set.document->blocks[shape.block];
        switch (shape.kind) {
        case SetShape::Kind::Rule:
            painter.fillRect(QRectF(shape.x, shape.y, shape.width, points(hairline)), Qt::black);
            break;
        case SetShape::Kind::Blank:
            painter.fillRect(QRectF(shape.x, shape.y, shape.width, points(hairline)), Qt::gray);
            break;
        case SetShape::Kind::Strokes:
            drawStrokes(std::get<Strokes>(block), shape, painter);
            break;
        case SetShape::Kind::Code:
            drawCode(std::get<Code>(block), shape, painter);
            break;
        }
    }
    drawFrame(page, set.pages.size(), painter);
}

} // namespace peelpack::print
