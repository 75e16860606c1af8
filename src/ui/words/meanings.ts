import { meanings as en, meaningsPage as enPage } from "./en/meanings.ts";
import { spoken } from "./spoken.ts";
import { meanings as sv, meaningsPage as svPage } from "./sv/meanings.ts";

/** What our own words mean, in the language in use. Loads when somebody asks. */
export const meanings = spoken<typeof en>({ en, sv });

/** The words of the page that lists them all. */
export const meaningsPage = spoken<typeof enPage>({ en: enPage, sv: svPage });
