import type { Field } from "../fields.ts";

/** What each column may be headed by, in small letters without spaces or signs. */
const heads: Readonly<Record<Field, string>> = {
  text: "aswritten written text freetext line description productdescription details",
  name: "name item itemname product productname title article thing supply supplyname material label",
  kind: "kind type category family group itemtype producttype kindofthing",
  maker: "maker brand manufacturer make company vendor producer by",
  line: "series range lineofproducts productline collection subbrand model",
  code: "code number no nr sku ref reference colourcode colorcode colournumber colornumber productcode itemcode itemno articleno articlenumber partnumber id",
  gtin: "gtin ean ean13 upc barcode gtin13 eancode",
  colour: "colour color colourname colorname shade hue tint",
  hex: "hex hexcode rgb hexcolour hexcolor htmlcolour htmlcolor swatch hexvalue",
  medium: "medium paintmedium media",
  form: "form packaging packing",
  grade: "grade hardness pencilgrade",
  size: "size dimensions dimension papersize format sizes measure measurements",
  gsm: "gsm weight grammage gm2 g/m2 paperweight",
  ml: "ml volume millilitres milliliters contents content capacity",
  width: "width mm tipsize nibsize linewidth tipwidth nib thickness widthmm",
  sheets: "sheets sheetcount pages leaves sheetsinpad",
  owned: "qty quantity owned count amount have howmany pieces pcs stock instock onhand units numberowned",
  sheetsLeft: "sheetsleft sheetsremaining left remaining",
  state: "state condition status fill filllevel level",
  place: "place location where storage box drawer shelf livesin kept stored storedin bin",
  paid: "price paid cost pricepaid purchaseprice unitprice amountpaid costs spent",
  currency: "currency cur curr",
  acquired:
    "acquired got bought date purchased purchasedate dateacquired datebought acquiredon boughton goton since dateadded added",
  opened: "opened openedon dateopened firstused",
  tags: "tags tag labels keywords",
  note: "note notes comment comments remarks remark memo",
};

/** Words of Intake, in English. */
export const intakeWords = {
  heads,
  states: {
    ok: "ok, okay, fine, good, new, like new, full, unused, unopened, great",
    low: "low, running low, half, half full, nearly empty, almost empty, almost out, little left, low stock",
    empty: "empty, out, used up, finished, gone, none, none left, out of stock",
    dried: "dried, dry, dried out, dried up, dead, hardened",
  },
  /** Kinds that are none of ours on purpose. */
  otherKinds: "other, others, other things, misc, miscellaneous, various",
  months: "jan feb mar apr may jun jul aug sep oct nov dec",
  totals: "total, totals, sum, subtotal, grand total, altogether",

  unread: (text: string) => `“${text}” was not understood; it is kept in the note`,
  noKind: "nothing tells what kind of thing it is",
  kindUnknown: (text: string) => `“${text}” is no kind known here; it is kept in the note`,
  noSuchTrait: (text: string) => `“${text}” is nothing this kind of thing has; it is kept in the note`,
  dayFirst: (date: string) => `read as ${date}, the day first`,
  dayRead: (date: string) => `read as ${date}`,
  toCome: (date: string) => `${date} is still to come`,
  grouped: (amount: string) => `read as ${amount}`,
  currencyGuessed: (code: string) => `taken as ${code}`,
  checkDigit: "its last digit does not fit; it is kept as it is",
  hexRead: (hex: string) => `read as ${hex}`,
  sameAs: (row: number) => `the same as row ${row}`,

  here: "already here",
  hereWith: (have: number, says: number) => `already here, where you have ${have} and the list says ${says}`,
  before: "brought in before",
  noName: "nothing says what it is",
  total: "a sum of the list, no thing",
  headsAgain: "the heads once more",
  misfit: "it does not fit together",
};
