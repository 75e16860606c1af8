/** The words of the choice of a text's language. */
export const writeUpWords = {
  textIn: "Text in",
  chooseLanguage: "Choose the language of the text",
};
