// SPDX-License-Identifier: MIT
// The only list of views: what each keeps for itself from frame to frame, and how each is drawn.
#pragma once

#include "views/assessment_view.h"
#include "views/fill_view.h"
#include "views/gives_first_view.h"
#include "views/held_view.h"
#include "views/label_view.h"
#include "views/notice_view.h"
#include "views/own_species_view.h"
#include "views/readings_sheet_view.h"
#include "views/shelf_view.h"
#include "views/species_page_view.h"
#include "views/stock_view.h"
#include "views/tank_sheet_view.h"
#include "views/tank_view.h"
#include "views/top_view.h"
#include "views/water_sheet_view.h"
#include "views/years_view.h"

namespace shoalwright {

/// In a narrow window each panel is as high as what is in it, so that a finger scrolls the page and nothing inside it.
struct NarrowHeights {
  float stock = 330, shelf = 760, assessment = 820;
};

struct ViewStates {
  ShelfState shelf;
  HeldState held;
  StockState stock;
  TankState tank;
  AssessmentState assessment;
  GivesFirstState gives_first;
  TopState top;
  TankSheetState tank_sheet;
  WaterSheetState water_sheet;
  ReadingsSheetState readings_sheet;
  NarrowHeights narrow;
  SpeciesPageState species_page;
  OwnSpeciesState own_species;
  LabelState label;
  FillDesk fill;
};

}  // namespace shoalwright
