#pragma once

#include "core/base/result.h"
#include "platform/print/document.h"

#include <QByteArray>

#include <functional>

namespace peelpack::print {

enum class PageSize : std::uint8_t { Letter, A4 };

/// What stands on every page.
struct PageFrame {
    QString program; ///< whose paper it is
    QString date;    ///< when it was made
    PageSize size = PageSize::Letter;
};

struct Pdf {
    QByteArray bytes;
    std::size_t pages = 0;
};

/// Told after each page; false ends the work.
using OnPage = std::function<bool(std::size_t page, std::size_t pages)>;

/// Sets a document as PDF in Inter, embedded, its text extractable; each page says program, date, "page 2 of 9" and the
/// usual cautions. Needs a QGuiApplication (the offscreen platform is enough). CannotWrite: `onPage` said no, or it
/// cannot be drawn.
base::Result<Pdf> makePdf(const Document& document, const PageFrame& frame, const OnPage& onPage = {});

} // namespace peelpack::print
