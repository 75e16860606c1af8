import type { colourWords as en } from "./en.ts";

/** What they are called in Swedish: of one colour, "en färg", so that all words of a name agree. */
export const colourWords: typeof en = {
  hues: {
    pink: "rosa",
    red: "röd",
    "red-orange": "rödorange",
    orange: "orange",
    "yellow-orange": "gulorange",
    yellow: "gul",
    "yellow-green": "gulgrön",
    green: "grön",
    "blue-green": "blågrön",
    teal: "turkos",
    blue: "blå",
    "blue-violet": "blåviolett",
    violet: "violett",
    purple: "lila",
    brown: "brun",
    ochre: "ockragul",
    olive: "olivgrön",
    crimson: "karmosinröd",
  },
  greys: {
    white: "vit",
    black: "svart",
    "pale grey": "ljusgrå",
    grey: "grå",
    "dark grey": "mörkgrå",
  },
  strengths: { vivid: "klar", muted: "dämpad", greyish: "gråaktig" },
  lightnesses: { pale: "blek", light: "ljus", dark: "mörk", "very dark": "mycket mörk" },

  amounts: { little: "lite", plain: "", much: "mycket" },
  directions: { lighter: "ljusare", darker: "mörkare", stronger: "starkare", softer: "mer dämpad" },
  leaning: {
    red: "drar åt rött",
    orange: "drar åt orange",
    yellow: "drar åt gult",
    green: "drar åt grönt",
    teal: "drar åt turkos",
    blue: "drar åt blått",
    violet: "drar åt violett",
    pink: "drar åt rosa",
  },
  anotherGrey: "en annan grå",
};
