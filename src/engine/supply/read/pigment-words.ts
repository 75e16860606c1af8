/**
 * What paints are called after their pigments, and the colour that such a paint mostly has when laid on thick.
 * Common practice, approximate, ours: two makers' paints of one name differ, so each is a guess to be put right.
 */
export const pigmentWords = `
  ochre c0873f, yellow_ochre c8923e, golden_ochre cc8f2e, gold_ochre cc8f2e, brown_ochre 9a6a35, red_ochre 9b4a32,
  sienna_natural b5793a, raw_sienna b5793a, burnt_sienna 8a3f24, umber 6a5138, raw_umber 6b5639, burnt_umber 5a3a29,
  sap_green 4f6b28, hooker's_green 2f5a3a, terre_verte 6f7f5f, green_earth 6f7f5f, chromium_oxide_green 4f6b45,
  oxide_of_chromium 4f6b45, chrome_green 4f6b45, viridian 1f6f5c, emerald_green 12906a, phthalo_green 0b4f42,
  phthalo_blue 0f3573, phthalo_turquoise 0b4f5f, cobalt_green 3f8f7a, cobalt_turquoise 1f8f94, olive_green 677a04,
  ultramarine 23329a, ultramarine_blue 23329a, ultramarine_violet 5a3f86, ultramarine_deep 1e2b87,
  french_ultramarine 23329a, cobalt 1f4fa8, cobalt_blue 1f4fa8, cobalt_violet 8a4f9a, cerulean 2f86b3,
  cerulean_blue 2f86b3, prussian_blue 13304f, manganese_blue 1f8fbf, indanthrone_blue 22305c, paris_blue 13304f,
  payne's_grey 3b4650, paynes_grey 3b4650, davy's_grey 6b6e66, neutral_tint 3f3d47, ivory_black 26231f,
  lamp_black 22242a, mars_black 25211f, bone_black 27231f, carbon_black 1f1f20, titanium_white fafaf6, zinc_white
  f6f8f8, chinese_white f5f7f6, permanent_white fafaf7, flake_white f7f5ec, opaque_white fafaf7, naples_yellow
  ecd08d, cadmium_yellow f7b718, cadmium_yellow_light fbd22a, cadmium_yellow_deep f29c1b, cadmium_lemon f9e13a,
  chrome_yellow f6b21b, zinc_yellow f5e663, azo_yellow f8c91c, arylide_yellow f8d32a, gamboge dd9b1f, indian_yellow
  e49a1e, aureolin efc52f, cadmium_orange ee7623, cadmium_red cf2f26, cadmium_red_light dd4027, cadmium_red_deep
  a3222a, vermilion d8412c, vermillion d8412c, red_lead d5502c, alizarin 8a1f33, alizarin_crimson 8a1f33,
  crimson_lake 96203a, carmine a01c3c, madder 9c2f45, madder_lake 962a40, rose_madder c24560, permanent_rose c2265f,
  quinacridone_rose c0245f, quinacridone_magenta 97245a, quinacridone_red c22a3f, primary_magenta c21f6a,
  primary_cyan 0a7fb5, primary_yellow fbd81f, venetian_red a34430,
  light_red_oxide a94a35, english_red 9d3f2f, red_oxide 96402f, iron_oxide_red 96402f, caput_mortuum 5f3437,
  perylene_maroon 6a2530, van_dyke_brown 4a3a2e, vandyke_brown 4a3a2e, bistre 4a3524, cassel_earth 4f3f33,
  dioxazine_violet 3f2a6b, dioxazine_purple 3f2a6b, manganese_violet 74407f, sanguine a4492f, flesh_tint eebfa0,
  buff_titanium e4d7bd, sepia_brown 4f3d2f`;
