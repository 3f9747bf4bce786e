#include "platform/print/pdf.h"

#include "platform/fonts/inter.h"
#include "platform/print/page_setter.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

namespace peelpack::print {
namespace {

constexpr int dotsPerInch = 600;
constexpr double marginMm = 16;

void prepare(QPdfWriter& writer, const Document& document, const PageFrame& frame)
{
    writer.setResolution(dotsPerInch);
    writer.setPageSize(QPageSize(frame.size == PageSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(marginMm, marginMm, marginMm, marginMm), QPageLayout::Millimeter);
    writer.setTitle(document.title);
    writer.setCreator(QStringLiteral("Peelpack"));
}

} // namespace

base::Result<Pdf> makePdf(const Document& document, const PageFrame& frame, const OnPage& onPage)
{
    fonts::useInter();
    Pdf pdf;
    QBuffer buffer(&pdf.bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    prepare(writer, document, frame);
    const PageGeometry geometry{static_cast<double>(writer.width()), static_cast<double>(writer.height()),
                                static_cast<double>(dotsPerInch) / 72};
    PageSetter setter(writer, geometry, frame);
    const SetDocument set = setter.set(document);
    pdf.pages = set.pages.size();
    QPainter painter(&writer);
    if (!painter.isActive()) {
        return base::Error{base::ErrorCode::CannotWrite, "The PDF cannot be drawn."};
    }
    for (std::size_t page = 0; page < set.pages.size(); ++page) {
        if (page > 0) {
            writer.newPage();
        }
        setter.draw(set, page, painter);
        if (onPage && !onPage(page + 1, set.pages.size())) {
            return base::Error{base::ErrorCode::CannotWrite, "Printing was canceled; nothing was written."};
        }
    }
    painter.end();
    return pdf;
}

} // namespace peelpack::print
