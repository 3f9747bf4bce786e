#pragma once

#include "sync/carry/collector.h"

#include <QByteArray>
#include <QObject>
#include <QQmlEngine>

namespace peelpack::light {

/// Codes that a camera sees one after another, until a parcel is whole. Keeps what it has when the page is left.
class CodeReading : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a page's object")
    Q_PROPERTY(int have READ have NOTIFY changed)
    Q_PROPERTY(int of READ of NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(QString remark READ remark NOTIFY changed)

public:
    using QObject::QObject;

    [[nodiscard]] int have() const;
    /// 0: no code was read yet.
    [[nodiscard]] int of() const;
    /// "12 of 40 codes"; empty: no code was read yet.
    [[nodiscard]] QString progress() const;
    /// What is still to come, in a sentence.
    [[nodiscard]] QString missing() const;
    /// What is wrong with the last code; empty: nothing.
    [[nodiscard]] QString remark() const;

    /// The page opens: an old remark goes, and a parcel that was whole before may come again.
    Q_INVOKABLE void begin();
    /// A code from the camera, or from a picture.
    Q_INVOKABLE void read(const QByteArray& code);

Q_SIGNALS:
    void changed();
    /// A code told something new: somebody is at it.
    void took();
    /// A parcel is whole.
    void came(const QByteArray& parcel);

private:
    carry::Collector m_collector;
    enum class Remark { None, NoCode, Newer, StartedAnew } m_remark = Remark::None;
};

} // namespace peelpack::light
