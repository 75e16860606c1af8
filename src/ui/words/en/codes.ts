/** The words of finding by bar code, in English. */
export const codeWords = {
  title: "Find by bar code",
  lead: "The number under the bars finds the thing.",
  leadMore: "Type it, hold the bars before the camera, or choose a photo of them.",
  note: "What the camera sees stays on this device, and none of it is kept.",
  number: "Number under the bars",
  numberHint: "8, 12, 13 or 14 figures, with or without spaces",
  find: "Find it",
  camera: "Use the camera",
  stop: "Stop the camera",
  photo: "Choose a photo of the bars",
  looking: "Hold the bars before the camera, whole and in good light.",
  view: "What the camera sees",
  reading: "Looking at the photo…",
  notes: {
    empty: "There is no number yet.",
    letters: "There are only figures under the bars.",
    slip: "The last figure does not fit the others, so one of them is mistyped. Look at them again.",
    unseen: "No bar code was seen in the photo. Take it straight on, closer and sharp, or type the number.",
    noCamera: "There is no camera here. Type the number, or choose a photo of the bars.",
    denied:
      "The camera may not be used. Allow it for this site in the browser, or type the number, or choose a photo of the bars.",
    busy: "The camera cannot be used just now. Another program may have it. Type the number, or choose a photo of the bars.",
  },
  length: (count: string, isOne: boolean) =>
    `A bar code has 8, 12, 13 or 14 figures. This has ${isOne ? "1" : count}.`,
  found: (code: string, count: string, isOne: boolean) =>
    isOne ? `This is ${code}` : `${count} things of yours have ${code}`,
  unknown: (code: string) => `Nothing of yours has ${code}`,
  unknownText: "Add it once, and the bars will find it from then on.",
  add: "Add a thing with this number",
  adding: (code: string) => `What you write here gets the number ${code}.`,
};
