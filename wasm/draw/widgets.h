// SPDX-License-Identifier: MIT
// All of the kit.
#pragma once

#include "draw/bars.h"
#include "draw/buttons.h"
#include "draw/charts.h"
#include "draw/chips.h"
#include "draw/fields.h"
#include "draw/findings.h"
#include "draw/icons.h"
#include "draw/layout.h"
#include "draw/marks.h"
#include "draw/menus.h"
#include "draw/panels.h"
#include "draw/rulers.h"
#include "draw/slider.h"
#include "draw/stepper.h"
#include "draw/text.h"
#include "draw/toast.h"
#include "draw/tooltips.h"
#include "draw/ui.h"
