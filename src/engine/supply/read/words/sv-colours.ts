/** What Swedish calls a colour, and what English calls it: its colour is that of the English word. */
const same = `
  svart black, vit white, grå grey, röd red, blå blue, grön green, gul yellow, brun brown, lila purple, violett violet,
  rosa pink, orange orange, turkos turquoise, beige beige, cerise deeppink, guld gold, silver silver, koppar copper,
  brons bronze, vinröd burgundy, marinblå navy, mörkblå darkblue, ljusblå lightblue, mörkgrön darkgreen,
  ljusgrön lightgreen, mörkröd darkred, ljusröd light_red, mörkgrå darkgrey, ljusgrå lightgrey, mörkbrun dark_brown,
  ljusbrun light_brown, ljusgul lightyellow, mörkgul dark_yellow, ljusrosa lightpink, mörkrosa dark_pink,
  ljuslila light_purple, mörklila dark_purple, mörkviolett darkviolet, mörkorange darkorange, ljusorange light_orange,
  mörkturkos darkturquoise, mossgrön moss_green, mossa moss, skogsgrön forestgreen, olivgrön olive_green, oliv olive,
  gräsgrön grass_green, flaskgrön bottle_green, mintgrön mint_green, salviagrön sage_green, salvia sage, lövgrön leaf_green,
  äppelgrön apple_green, sjögrön seagreen, havsgrön seagreen, havsblå sea_blue, himmelsblå skyblue, isblå ice_blue,
  stålblå steelblue, stålgrå steel_grey, skiffergrå slategrey, skiffer slate, gråblå greyblue, blågrå blue_grey,
  blågrön blue_green, gulgrön yellowgreen, rödorange red_orange, rödbrun reddish_brown, gråbrun taupe, duvblå
  dusty_blue, gammelrosa dusty_rose, laxrosa salmon_pink, laxröd salmon, tegelröd brick_red, tegel brick, blodröd
  blood_red, körsbärsröd cherry, körsbär cherry, hallonröd raspberry, hallon raspberry, jordgubb strawberry, plommon
  plum, aprikos apricot, persika peach, korall coral, korallröd coral, citron lemon, citrongul lemon_yellow, senap
  mustard, senapsgul mustard_yellow, solrosgul sunflower, majsgul maize, halmgul straw, gyllengul golden_yellow,
  bärnsten amber, saffran saffron, smaragd emerald, jade jade, safir sapphire, rubin ruby, ametist amethyst,
  elfenben ivory, grädde cream, gräddvit cream, benvit off_white, bruten_vit off_white, sand sand, sandfärgad sand,
  rost rust, rostbrun rust, rostorange burnt_orange, kastanj chestnut, kastanjebrun chestnut, choklad chocolate,
  chokladbrun chocolate, kaffe coffee, kanel cinnamon, karamell caramel, lera clay, terrakotta terracotta, lavendel
  lavender, syren lilac, ljung heather, aubergine aubergine, björnbär berry, blåbär blueberry, lingonröd cranberry,
  kallgrå cool_grey, varmgrå warm_grey, petrol petrol, sepia sepia, indigo indigo, magenta magenta, cyan cyan, svartbrun
  sepia_brown, mullvad taupe, kricka teal, ockra ochre, gulockra yellow_ochre, ljus_ockra yellow_ochre, guldockra
  golden_ochre, rödockra red_ochre, brunockra brown_ochre, umbra umber, bränd_umbra burnt_umber, obränd_umbra raw_umber, rå_umbra
  raw_umber, bränd_sienna burnt_sienna, bränd_terra burnt_sienna, obränd_sienna raw_sienna, rå_sienna raw_sienna,
  terra_di_siena raw_sienna, obränd_terra raw_sienna, saftgrön sap_green, kromoxidgrön chromium_oxide_green, grönjord green_earth,
  ftalogrön phthalo_green, ftaloblå phthalo_blue, smaragdgrön emerald_green, koboltgrön cobalt_green, koboltturkos
  cobalt_turquoise, kobolt cobalt, koboltblå cobalt_blue, koboltviolett cobalt_violet, ultramarin ultramarine,
  ultramarinblå ultramarine, ultramarinviolett ultramarine_violet, coelinblå cerulean_blue, ceruleumblå cerulean_blue, preussiskblå
  prussian_blue, berlinerblå prussian_blue, pariserblå paris_blue, paynes_grå payne's_grey, neutraltint neutral_tint,
  elfenbenssvart ivory_black, lampsvart lamp_black, kimrök lamp_black, bensvart bone_black, titanvit titanium_white,
  zinkvit zinc_white, kremservit flake_white, täckvit opaque_white, neapelgul naples_yellow, kadmiumgul
  cadmium_yellow, kromgul chrome_yellow, indiskgul indian_yellow, gummigutta gamboge, kadmiumorange cadmium_orange, kadmiumröd cadmium_red,
  cinnober vermilion, cinnoberröd vermilion, mönja red_lead, alizarinröd alizarin_crimson, karmin carmine, karminröd
  carmine, krapplack madder_lake, krapprosa rose_madder, primärgul
  primary_yellow, venetianskt_rött venetian_red, engelskt_rött english_red, järnoxidröd iron_oxide_red, vandyckbrun
  van_dyke_brown, van_dyck_brun van_dyke_brown, hudfärg flesh_tint, siena_bränd burnt_sienna, umbra_bränd burnt_umber`;

/** How the last part of a colour word changes with what it is said of: "mossgrönt papper", "svarta pennor". */
const endings: readonly (readonly [string, readonly string[]])[] = [
  ["röd", ["röda", "rött"]],
  ["grön", ["gröna", "grönt"]],
  ["gul", ["gula", "gult"]],
  ["vit", ["vita", "vitt"]],
  ["svart", ["svarta"]],
  ["brun", ["bruna", "brunt"]],
  ["grå", ["gråa", "grått"]],
  ["blå", ["blåa", "blått"]],
  ["violett", ["violetta"]],
];

const formsOf = (word: string): readonly string[] => {
  const [last, forms = []] = endings.find(([end]) => word.endsWith(end)) ?? [];
  return [word, ...forms.map((form) => word.slice(0, -(last?.length ?? 0)) + form)];
};

/** Swedish colour words in all their forms, each with its English word and the form that a name has. */
export const swedishColours: readonly (readonly [word: string, english: string, plain: string])[] = same
  .trim()
  .split(/,\s+/)
  .flatMap((entry) => {
    const [word = "", english = ""] = entry.trim().split(/\s+/);
    return formsOf(word).map((form) => [form, english, word] as const);
  });
