import { language } from "../device.ts";

const english = {
  setClaims: (line: string) => `Note what is said of ${line}`,
  decide: (line: string) => `Choose between what is said of ${line}`,
  leaveOpen: (line: string) => `Leave open what is said of ${line}`,
  addVariant: (form: string, line: string) => `Add ${form} as another form of ${line}`,
  removeVariant: (line: string) => `Remove a form of ${line}`,
  followVariant: (form: string) => `Choose ${form} as the form to go by`,
  addErratum: (kit: string) => `Add a correction to ${kit}`,
  editErratum: (kit: string) => `Change a correction to ${kit}`,
  removeErratum: (kit: string) => `Remove a correction to ${kit}`,
};

const swedish: typeof english = {
  setClaims: (line) => `Anteckna vad som sägs om ${line}`,
  decide: (line) => `Välj mellan det som sägs om ${line}`,
  leaveOpen: (line) => `Lämna öppet vad som sägs om ${line}`,
  addVariant: (form, line) => `Lägg till ${form} som en annan form av ${line}`,
  removeVariant: (line) => `Ta bort en form av ${line}`,
  followVariant: (form) => `Välj ${form} som den form som gäller`,
  addErratum: (kit) => `Lägg till en rättelse i ${kit}`,
  editErratum: (kit) => `Ändra en rättelse i ${kit}`,
  removeErratum: (kit) => `Ta bort en rättelse i ${kit}`,
};

/** The names of acts about what is told of a kit's lines: apart from the others, so that the first visit is light. */
export const toldWords = { en: english, sv: swedish }[language];
