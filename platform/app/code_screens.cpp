#include "platform/app/code_screens.h"

#include "platform/camera/qr_picture.h"
#include "qml/words/bridge.h"

namespace peelpack::app {

void drawCodes(ScreenWalk& walk, shell::Phone& phone, StillCamera& camera)
{
    student::Parcels* parcels = phone.student()->parcels();
    light::RunningCodes* codes = parcels->codes();
    const auto pack = [&] {
        if (!parcels->packAsCodes()) {
            walk.fail(parcels->error());
        }
    };
    pack();
    walk.put("home", "over", QStringLiteral("showCodes"));
    walk.shoot("16-codes");
    codes->run();
    walk.shoot("16-codes-run");
    walk.put("home", "over", QStringLiteral("readCodes"));
    walk.shoot("16-no-camera");
    walk.put("home", "over", QString());
    pack();
    constexpr int read = 12;
    for (int i = 0; i < read; ++i) {
        parcels->reading()->read(codes->code());
        codes->step();
    }
    constexpr int module = 6;
    camera.seen = camera::qrPicture(words::toBytes(codes->code()), module);
    camera.present = true;
    walk.put("home", "over", QStringLiteral("readCodes"));
    walk.shoot("16-reading-codes");
    walk.put("home", "over", QString());
    camera.present = false;
    codes->end();
}

} // namespace peelpack::app
