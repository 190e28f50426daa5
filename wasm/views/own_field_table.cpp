// SPDX-License-Identifier: MIT
#include "views/own_fields.h"

namespace shoalwright {

namespace {

constexpr OwnField name_fields[] = {{"name.common", "Name", Ask::text},
                                    {"name.scientific", "Scientific name", Ask::text},
                                    {"kind", "Animal", Ask::word},
                                    {"group", "Family on the shelf", Ask::word}};
constexpr OwnField size_fields[] = {{"size.adult_tl_cm", "Adult length", Ask::number, Counts::length, 1, 0.5},
                                    {"size.sold_cm", "Length when sold", Ask::number, Counts::length, 1, 0.5},
                                    {"size.height_with_fins_cm", "Height with fins", Ask::number, Counts::length, 1, 0.5},
                                    {"size.body", "Shape of body", Ask::word}};
constexpr OwnField water_fields[] = {
    {"water.temperature_c.tolerated", "Temperature it lives in", Ask::range, Counts::temperature, 1},
    {"water.temperature_c.ideal", "thrives in", Ask::range, Counts::temperature, 1},
    {"water.ph.tolerated", "pH it lives in", Ask::range, Counts::plain, 1, 0.1},
    {"water.ph.ideal", "thrives in", Ask::range, Counts::plain, 1, 0.1},
    {"water.gh_dgh.tolerated", "GH it lives in", Ask::range, Counts::gh, 1},
    {"water.gh_dgh.ideal", "thrives in", Ask::range, Counts::gh, 1},
    {"water.kh_dkh.tolerated", "KH it lives in", Ask::range, Counts::kh, 1},
    {"water.kh_dkh.ideal", "thrives in", Ask::range, Counts::kh, 1},
    {"water.salinity", "Salt", Ask::word},
    {"water.oxygen_least_mg_l", "Oxygen at least, mg/L", Ask::number, Counts::plain, 1, 0.5},
    {"water.hardiness", "Hardiness", Ask::word}};
constexpr OwnField life_fields[] = {{"life.style", "Way of life", Ask::word},
                                    {"life.depth.surface", "Time near the surface", Ask::number, Counts::share, 0, 5},
                                    {"life.depth.mid", "in the middle", Ask::number, Counts::share, 0, 5},
                                    {"life.depth.bottom", "near the floor", Ask::number, Counts::share, 0, 5},
                                    {"life.group.kind", "Lives as", Ask::word},
                                    {"life.group.least", "Least group", Ask::number, Counts::whole, 0},
                                    {"life.group.good", "Good group", Ask::number, Counts::whole, 0},
                                    {"life.sexes.ratio", "Sexes", Ask::ratio},
                                    {"life.sexes.told_apart", "Told apart", Ask::word},
                                    {"life.group.all_male_ok", "Males alone are fine", Ask::yes},
                                    {"life.active", "Active by", Ask::word},
                                    {"life.current", "Current", Ask::word},
                                    {"life.cover", "Cover", Ask::word},
                                    {"life.jumps", "Jumps", Ask::word},
                                    {"life.air_breather", "Must breathe air", Ask::yes}};
constexpr OwnField temper_fields[] = {
    {"temper.to_own_kind", "To its own kind", Ask::word}, {"temper.to_others", "To others", Ask::word},
    {"temper.rival_males", "Males are rivals", Ask::yes}, {"temper.nips_fins", "Nips fins", Ask::word},
    {"temper.fins", "Its own fins", Ask::word},           {"temper.feeding_pace", "Feeds", Ask::word}};
constexpr OwnField food_fields[] = {{"mouth.eater", "Eats like a", Ask::word},
                                    {"mouth.eats_shrimp", "Eats shrimps", Ask::word},
                                    {"mouth.eats_snails", "Eats snails", Ask::yes},
                                    {"mouth.eats_plants", "Eats plants", Ask::word},
                                    {"mouth.digs", "Digs", Ask::yes},
                                    {"diet.kind", "Diet", Ask::word},
                                    {"diet.feeds_at", "Feeds at", Ask::word},
                                    {"diet.foods", "Foods", Ask::words}};
constexpr OwnField needs_fields[] = {{"needs.least_length_cm", "Least length of tank", Ask::number, Counts::length, 0, 10},
                                     {"needs.least_volume_l", "Least volume", Ask::number, Counts::volume, 0, 10},
                                     {"needs.substrate", "Substrate", Ask::word},
                                     {"needs.caves", "Caves for each", Ask::number, Counts::whole, 0},
                                     {"needs.mature_weeks", "Tank has run, weeks", Ask::number, Counts::whole, 0},
                                     {"needs.wood", "Needs wood", Ask::yes},
                                     {"needs.open_floor", "Needs open floor", Ask::yes},
                                     {"note", "Note", Ask::text}};
constexpr OwnChapter chapters[] = {{"Name", name_fields},  {"Size", size_fields},     {"Water", water_fields},
                                   {"Life", life_fields},  {"Temper", temper_fields}, {"Food", food_fields},
                                   {"Needs", needs_fields}};

}  // namespace

std::span<const OwnChapter> own_chapters() { return chapters; }

}  // namespace shoalwright
