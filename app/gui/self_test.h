#pragma once

#include "app/gui/desk.h"

namespace flowkin {

/// Opens the window, shows every screen in every language, both shades and
/// twice the size, and closes it. Returns 1 where anything was complained
/// about on the way, else 0.
int RunSelfTest(const DeskOptions& options);

/// In both, an empty store is first filled with the sample clips.

/// Writes SCREEN-LANGUAGE-SHADE-SIZE.png of every screen into `folder`, which
/// is made if need be. Returns 0, or 1 where that fails.
int TakeScreenshots(const DeskOptions& options, const QString& folder);

}  // namespace flowkin
