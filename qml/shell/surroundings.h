#pragma once

#include "platform/camera/camera.h"
#include "platform/session/session.h"
#include "platform/share/share.h"
#include "platform/vault/install_mark.h"
#include "qml/student/desk.h"

namespace peelpack::shell {

/// What the app stands on: where its vault lies, and the parts of the device that it uses. All of it outlives the app's
/// objects.
struct Surroundings {
    std::string vaultFile;
    QString settingsFile;
    vault::MarkStore& marks;
    session::Clock clock;
    keys::RandomSource& random;
    camera::Camera& camera;
    share::Share& share;
    student::Shelf& shelf;
};

} // namespace peelpack::shell
