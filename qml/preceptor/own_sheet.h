#pragma once

#include "qml/preceptor/sitting.h"

#include <optional>

namespace peelpack::preceptor {

/// A sheet that a student's phone showed to this one, which is the preceptor's own.
class OwnSheet : public Sitting {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a sheet's code was scanned")

public:
    /// `before`: when this phone signed that sheet already.
    OwnSheet(journal::SigningRequest request, base::Date today, const std::optional<journal::Time>& before,
             QObject* parent = nullptr);

    [[nodiscard]] const journal::SigningRequest& request() const { return m_request; }
    [[nodiscard]] const session::SheetMarks& marked() const { return sheets().front().marks(); }
    [[nodiscard]] QString student() const override { return words::fromUtf8(m_request.studentName); }
    [[nodiscard]] QString beforehand() const override;
    /// Says why it was not signed; empty: nothing to say.
    void tell(const QString& problem) { fail(problem); }

protected:
    [[nodiscard]] base::Date today() const override { return m_today; }

private:
    journal::SigningRequest m_request;
    base::Date m_today;
    std::optional<journal::Time> m_before;
};

} // namespace peelpack::preceptor
