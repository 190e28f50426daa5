// SPDX-License-Identifier: MIT
#include "share/detail/deflate.h"

namespace shoalwright {

namespace {

// Pieces of a species card and of a log first, then common words of notes about tanks. Deflate reaches the end of it with the
// fewest bits.
constexpr std::string_view dictionary =
    "\"evidence\":{\"*\":{\"class\":\"keeper\"}},\"legal\":[],\"look\":{\"colours\":[],\"fins\":\"plain\",\"form\":\"marks\":["
    "\"breeding\":{\"mode\":\"egg-scatterer\",\"brood\":[\"first_food\":\"infusoria\",\"free_swimming_days\":[\"hatch\":{"
    "\"hours\":["
    "\"diet\":{\"feeds_at\":\"mid\",\"foods\":[\"flake\",\"small-frozen\"],\"kind\":\"omnivore\"},\"group\":\"others\",\"id\":"
    "\"own--"
    "\"life\":{\"active\":\"day\",\"air_breather\":false,\"cover\":\"some\",\"current\":\"gentle\",\"depth\":{\"bottom\":0.25,"
    "\"mid\":0.6,"
    "\"surface\":0.15},\"group\":{\"added\":\"any\",\"all_male_ok\":true,\"good\":10,\"kind\":\"shoal\",\"least\":6},\"jumps\":"
    "\"rarely\","
    "\"longevity_y\":[\"sexes\":{\"ratio\":null,\"told_apart\":\"hard\"},\"style\":\"calm_mid\"},\"mouth\":{\"digs\":false,"
    "\"eater\":"
    "\"micropredator\",\"eats_plants\":\"no\",\"eats_shrimp\":\"young\",\"eats_snails\":false,\"gape_share\":0.07},\"name\":{"
    "\"common\":[{"
    "\"lang\":\"en\",\"text\":\"\"}],\"family\":\"\",\"misapplied\":[],\"scientific\":\"\",\"sold_as\":[],\"status\":\"settled\","
    "\"synonyms\":[]},"
    "\"needs\":{\"caves\":0,\"least_length_cm\":60,\"least_volume_l\":54,\"mature_weeks\":0,\"open_floor\":false,\"substrate\":"
    "\"any\","
    "\"wood\":false},\"size\":{\"adult_tl_cm\":\"body\":\"fusiform\",\"body_depth_share\":0.3,\"published_max_cm\":\"published_"
    "max_type\":"
    "\"TL\",\"sold_cm\":2},\"temper\":{\"breeds_with\":[],\"feeding_pace\":\"usual\",\"fins\":\"short\",\"look_alike_group\":"
    "null,"
    "\"nips_fins\":\"no\",\"rival_males\":false,\"to_others\":\"peaceful\",\"to_own_kind\":\"peaceful\"},\"water\":{\"gh_dgh\":{"
    "\"ideal\":["
    "],\"tolerated\":[\"hardiness\":\"usual\",\"kh_dkh\":{\"ideal\":[],\"oxygen_least_mg_l\":5,\"ph\":{\"ideal\":[6,7],"
    "\"tolerated\":[5.5,7.5]},"
    "\"salinity\":\"fresh\",\"temperature_c\":{\"ideal\":[24,26],\"tolerated\":[22,28]}}}"
    "[{\"date\":\"2027-\",\"ammonia_mg_l\":0,\"nitrite_mg_l\":0,\"nitrate_mg_l\":,\"lost\":[{\"count\":1,\"species\":\"}],"
    "\"note\":\"\"},{\"date\":"
    "\"2026-\",\"ph\":6.,\"temperature_c\":25,\"day0\":\"2027-\",\"tank\":{},\"water\":{}}]{\"species\":\"true,false,null"
    "/life/group/least/water/temperature_c/tolerated/size/adult_tl_cm"
    " goldfish bristlenose angelfish killifish rainbowfish cichlid danios guppies mollies platies endlers puffer goby frog "
    "crayfish"
    " breeding spawning eggs fry juvenile adults quarantine medicine treatment parasite wild-caught tank-bred brackish"
    " neighbour brother sister daughter children school office library reading room living room kitchen bedroom cabinet stand"
    " thermometer thermostat outlet intake spray bar airstone CO2 fertiliser trimming prune glass algae biofilm"
    " driftwood rocks slate leaf litter botanicals moss fern anubias crypts stems carpet floating plants cave hide tannins"
    " temperature hardness conductivity nitrate nitrite ammonia oxygen conditioner remineralise reverse osmosis rainwater tap "
    "water"
    " Monday Tuesday Wednesday Thursday Friday Saturday Sunday January February March April May June July August September "
    "October"
    " November December spring summer autumn winter morning evening night weekend holiday fortnight month every other day each "
    "week"
    " corydoras catfish rasboras harlequins tetras barbs gouramis pair of fighter loaches otos shrimps snails males females male "
    "female"
    " Planned for Moved from Bought from Given by Upgrade to Remember to Keep the lid closed Watch the No more than Do not add "
    "before"
    " would like might want could perhaps maybe because before after until instead of about another already always never still"
    " large small larger smaller quiet shy bold fast slow long short deep shallow left right back front corner middle bottom "
    "surface"
    " feeding food frozen live flake twice a day once a week water change litres per cent the filter was cleaned heater lamp "
    "light hours"
    " plants are growing, some of them, with the fish in the tank and the water is at the end of the ";

}  // namespace

std::string_view dictionary_v1() { return dictionary; }

}  // namespace shoalwright
