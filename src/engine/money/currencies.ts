/**
 * ISO 4217 currencies by the number of decimals of their minor unit.
 *
 * @see ISO 4217:2015, List One (maintenance agency SIX), publication date 2024-06-25. Codes without a minor
 *   unit (gold, testing, special drawing rights) are left out: nothing is priced in them.
 *   `Intl` must not be asked instead: it gives 0 decimals for sixteen currencies to which the standard gives 2 or 3.
 */
const byDecimals: Readonly<Record<number, string>> = {
  0: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF",
  2:
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD " +
    "CDF CHE CHF CHW CNY COP COU CRC CUC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP " +
    "GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL " +
    "MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN " +
    "QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD " +
    "TWD TZS UAH USD USN UYU UZS VED VES WST XCD YER ZAR ZMW ZWG",
  3: "BHD IQD JOD KWD LYD OMR TND",
  4: "CLF UYW",
};

const decimals: ReadonlyMap<string, number> = new Map(
  Object.entries(byDecimals).flatMap(([digits, codes]) =>
    codes.split(" ").map((code) => [code, Number(digits)] as const),
  ),
);

/** Every currency code the engine knows, in alphabetical order. */
export const currencyCodes: readonly string[] = [...decimals.keys()].toSorted();

/** Whether `code` is an ISO 4217 currency with a minor unit. */
export const isCurrency = (code: string): boolean => decimals.has(code);

/**
 * Decimals of a currency's minor unit: 0 (JPY) to 4.
 * @throws RangeError for an unknown code: codes are checked where they are read.
 */
export function minorDigits(code: string): number {
  const digits = decimals.get(code);
  if (digits === undefined) throw new RangeError(`${code} is not a currency`);
  return digits;
}
