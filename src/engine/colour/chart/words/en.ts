/** What can be wrong with a photo of a chart, or with what was said of it. */
export const chartFaults = {
  "broken-photo": {
    problem: "the picture is not whole",
    remedy: "choose it again, or take it again",
  },
  "no-rows": { problem: "less than one", remedy: "write a whole number from 1 up" },
  "no-columns": { problem: "less than one", remedy: "write a whole number from 1 up" },
  "many-rows": {
    problem: "more than 60",
    remedy: "photograph the chart in parts, and read one after the other",
  },
  "many-columns": {
    problem: "more than 60",
    remedy: "photograph the chart in parts, and read one after the other",
  },
  "corner-outside": { problem: "a corner lies outside the picture", remedy: "mark all four inside it" },
  "corners-cross": {
    problem: "the corners cross, or lie on one line",
    remedy: "mark them in order around the chart",
  },
  "too-small": { problem: "the swatches are too small in this picture", remedy: "take it from nearer by" },
  "spot-outside": {
    problem: "a spot lies outside the picture",
    remedy: "mark bare paper inside it",
  },
  "wrong-gap": {
    problem: "not between 0 and 0.6",
    remedy: "write the bare share of the way between two swatches",
  },
  "dark-white": {
    problem: "too dark for white paper",
    remedy: "write a lightness from 50 to 100",
  },
  "too-bright": {
    problem: "the paper is brighter than the camera could tell",
    remedy: "take it again in less light",
  },
  "no-paper": {
    problem: "no bare paper was found around the swatches",
    remedy: "mark a few spots of bare paper",
  },
};
