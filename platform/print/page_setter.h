#pragma once

#include "platform/print/pdf.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPainter>

#include <array>
#include <vector>

namespace peelpack::print {

/// The area inside the margins, in dots of the device.
struct PageGeometry {
    double width = 0;
    double height = 0;
    double point = 1; ///< dots in a point of 1/72 inch
};

/// One line of text in its place on a page.
struct SetLine {
    double x = 0;
    double baseline = 0;
    Style style = Style::Body;
    QString text;
};

/// One thing that is drawn and not written.
struct SetShape {
    enum class Kind : std::uint8_t { Rule, Strokes, Code, Blank };
    Kind kind = Kind::Rule;
    double x = 0;
    double y = 0;
    double width = 0;
    std::size_t block = 0; ///< of the document
};

struct SetPage {
    std::vector<SetLine> lines;
    std::vector<SetShape> shapes;
};

struct SetDocument {
    const Document* document = nullptr; ///< lent
    std::vector<SetPage> pages;
};

/// Breaks a document into lines and pages, and draws them.
class PageSetter {
public:
    /// The frame must outlive it.
    PageSetter(QPaintDevice& device, const PageGeometry& geometry, const PageFrame& frame);

    [[nodiscard]] SetDocument set(const Document& document);
    void draw(const SetDocument& set, std::size_t page, QPainter& painter) const;

private:
    struct TableState;

    void setBlock(const Paragraph& paragraph);
    void setBlock(const Table& table);
    void setBlock(const Strokes& strokes);
    void setBlock(const Code& code);
    void setBlock(const Blank& blank);
    void setBlock(const NewPage& page);

    /// The font of a style on the device, measured once.
    struct Face {
        QFont font;
        QFontMetricsF metrics;
    };
    static Face faceOf(Style style, QPaintDevice& device);
    [[nodiscard]] const Face& face(Style style) const { return m_faces[static_cast<std::size_t>(style)]; }
    [[nodiscard]] double lineHeight(Style style) const { return face(style).metrics.lineSpacing(); }
    [[nodiscard]] double ascent(Style style) const { return face(style).metrics.ascent(); }
    [[nodiscard]] double widthOf(const QString& text, Style style) const
    {
        return face(style).metrics.horizontalAdvance(text);
    }
    [[nodiscard]] std::vector<QString> broken(const QString& text, Style style, double width) const;
    [[nodiscard]] double points(double count) const { return count * m_geometry.point; }
    [[nodiscard]] double bottom() const;
    [[nodiscard]] bool pageIsEmpty() const;
    void ensure(double height);
    void newPage();
    void writeLines(const std::vector<QString>& lines, Style style, double x);
    void setTitles(const TableState& state);
    void addShape(SetShape::Kind kind, double x, double width);

    void drawStrokes(const Strokes& strokes, const SetShape& shape, QPainter& painter) const;
    void drawCode(const Code& code, const SetShape& shape, QPainter& painter) const;
    void drawFrame(std::size_t page, std::size_t pages, QPainter& painter) const;

    QPaintDevice& m_device;
    PageGeometry m_geometry;
    const PageFrame& m_frame;
    std::array<Face, styleCount> m_faces; ///< by style
    SetDocument m_set;
    std::size_t m_block = 0;
    double m_y = 0;
};

} // namespace peelpack::print
