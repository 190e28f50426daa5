// SPDX-License-Identifier: MIT
#include "draw/fish/animal.h"
#include "draw/fish/made_shape.h"
#include "draw/fish/shapes.h"

namespace shoalwright {

namespace {

constexpr TableOf tables[] = {{Form::deep_loach, &deep_loach_shape},
                              {Form::fighter, &fighter_shape},
                              {Form::dwarf_cichlid, &dwarf_cichlid_shape},
                              {Form::angelfish, &angelfish_shape},
                              {Form::mbuna, &mbuna_shape},
                              {Form::killi, &killi_shape},
                              {Form::puffer, &puffer_shape},
                              {Form::goby, &goby_shape},
                              {Form::rainbowfish, &rainbowfish_shape},
                              {Form::blue_eye, &blue_eye_shape},
                              {Form::ricefish, &ricefish_shape},
                              {Form::four_eyes, &four_eyes_shape},
                              {Form::halfbeak, &halfbeak_shape},
                              {Form::gar, &gar_shape},
                              {Form::pipefish, &pipefish_shape},
                              {Form::whisker_catfish, &whisker_catfish_shape},
                              {Form::squeaker, &squeaker_shape},
                              {Form::shovelnose, &shovelnose_shape},
                              {Form::shark_catfish, &shark_catfish_shape},
                              {Form::glass_catfish, &glass_catfish_shape},
                              {Form::banjo_catfish, &banjo_catfish_shape},
                              {Form::talking_catfish, &talking_catfish_shape},
                              {Form::eel_catfish, &eel_catfish_shape},
                              {Form::electric_catfish, &electric_catfish_shape},
                              {Form::hoplo, &hoplo_shape},
                              {Form::whiptail, &whiptail_shape},
                              {Form::twig_catfish, &twig_catfish_shape},
                              {Form::knifefish, &knifefish_shape},
                              {Form::featherback, &featherback_shape},
                              {Form::elephantnose, &elephantnose_shape},
                              {Form::bichir, &bichir_shape},
                              {Form::ropefish, &ropefish_shape},
                              {Form::lungfish, &lungfish_shape},
                              {Form::spiny_eel, &spiny_eel_shape},
                              {Form::sturgeon, &sturgeon_shape},
                              {Form::arowana, &arowana_shape},
                              {Form::butterflyfish, &butterflyfish_shape},
                              {Form::archerfish, &archerfish_shape},
                              {Form::moonfish, &moonfish_shape},
                              {Form::sunfish, &sunfish_shape},
                              {Form::leaffish, &leaffish_shape},
                              {Form::bush_fish, &bush_fish_shape},
                              {Form::paradise_fish, &paradise_fish_shape},
                              {Form::wild_betta, &wild_betta_shape},
                              {Form::snakehead, &snakehead_shape},
                              {Form::mudskipper, &mudskipper_shape},
                              {Form::dragon_goby, &dragon_goby_shape},
                              {Form::large_cichlid, &large_cichlid_shape},
                              {Form::hump_cichlid, &hump_cichlid_shape},
                              {Form::parrot_cichlid, &parrot_cichlid_shape},
                              {Form::discus, &discus_shape},
                              {Form::eartheater, &eartheater_shape},
                              {Form::hap, &hap_shape},
                              {Form::slim_cichlid, &slim_cichlid_shape},
                              {Form::sardine_cichlid, &sardine_cichlid_shape},
                              {Form::shell_dweller, &shell_dweller_shape},
                              {Form::shark_minnow, &shark_minnow_shape},
                              {Form::torpedo_barb, &torpedo_barb_shape},
                              {Form::algae_eater, &algae_eater_shape},
                              {Form::hillstream, &hillstream_shape},
                              {Form::pacu, &pacu_shape},
                              {Form::headstander, &headstander_shape},
                              {Form::prochilodus, &prochilodus_shape},
                              {Form::pencilfish, &pencilfish_shape}};

}  // namespace

[[gnu::noinline]] FishShape later_shape(Form form) {
  const ShapeData* table = &slim_tetra_shape;
  for (const TableOf& one : tables)
    if (one.form == form) table = one.table;
  return made(*table);
}

[[gnu::noinline]] Mesh later_mesh(const AnimalLook& look, const Coat& coat, int level) {
  switch (build_of(look.form)) {
    case Build::fish: break;
    case Build::shrimp: return shrimp_mesh(look, coat, level);
    case Build::crayfish: return crayfish_mesh(look, coat, level);
    case Build::crab: return crab_mesh(look, coat, level);
    case Build::snail: return snail_mesh(look, coat, level);
    case Build::frog: return frog_mesh(look, coat, level);
    case Build::ray: return ray_mesh(look, coat, level);
  }
  return fish_mesh(look, coat, level);
}

}  // namespace shoalwright
