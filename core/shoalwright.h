// SPDX-License-Identifier: MIT
// The front door: everything that a program outside may rely on.
#pragma once

#include "advice/first_help.h"
#include "advice/recipe_card.h"
#include "advice/roads.h"
#include "assess/assess.h"
#include "assess/largest.h"
#include "catalog/builtin.h"
#include "catalog/catalog.h"
#include "catalog/read.h"
#include "plan/plan.h"
#include "search/search.h"
#include "share/assessment_json.h"
#include "share/fill_json.h"
#include "share/json_text.h"
#include "share/link.h"
#include "share/patch.h"
#include "share/plan_json.h"
#include "share/recipe_json.h"
#include "units/result.h"
