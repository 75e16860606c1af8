/** The words of photos of things, in English. */
export const photoWords = {
  title: "Photos",
  add: "Add a photo",
  addNamed: (name: string) => `Add a photo of ${name}`,
  hint: "It stays on this device, and is kept without where it was taken and with what.",
  busy: "Taking it in…",
  added: (name: string) => `Added a photo of ${name}`,
  twice: "That photo is here already.",
  removed: (name: string) => `Removed a photo of ${name}`,
  remove: "Remove this photo",
  close: "Close",
  photoOf: (name: string, place: number, count: number) =>
    count === 1 ? `Photo of ${name}` : `Photo ${place} of ${count} of ${name}`,
  missing: "Not on this device. A copy of everything made where it was taken has it.",
  missingShort: "not here",
  refused: (file: string) => `${file} was not added`,
  nothingAdded: "Nothing was added.",
  faults: {
    empty: { problem: "The file is empty.", remedy: "Take the photo again, or choose another file." },
    "too-large": { problem: "It is larger than 40 MB.", remedy: "Choose a smaller photo." },
    "too-many-pixels": {
      problem: "It has more than 52 million pixels, too many to unpack here.",
      remedy: "Make it smaller first, or choose another photo.",
    },
    "not-a-photo": {
      problem: "It is not a photo.",
      remedy: "Choose a JPEG, PNG or WebP picture.",
    },
    "unreadable-kind": {
      problem: "This browser cannot read photos of this kind, such as HEIC or a camera's unprocessed files.",
      remedy:
        "Save it as JPEG first, or set the phone's camera to its most compatible kind, and choose that.",
    },
    damaged: {
      problem: "It is damaged or not all there.",
      remedy: "Copy it to this device again, or choose another photo.",
    },
    "not-clean": {
      problem: "This browser leaves more in a photo than the picture.",
      remedy: "Open the app in another browser to add it.",
    },
    lost: { problem: "The browser ran out of room for it.", remedy: "Close other tabs and try again." },
    unread: {
      problem: "The file cannot be read.",
      remedy: "Choose it again, or copy it to this device first.",
    },
    full: {
      problem: "There are as many photos as a copy of everything can hold: 1,500, or 250 MB.",
      remedy: "Remove photos that you no longer need.",
    },
  },
};
