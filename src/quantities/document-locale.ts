/**
 * The locale a document is written in: the business's own where it has the document's language, else that language as it
 * is written in the business's country ("en-US" in Spanish is "es-US").
 * @param locale the business's locale
 * @param language the document's language, two letters
 */
export function documentLocale(locale: string, language: string): string {
  const [own, country] = locale.split('-');
  return own === language ? locale : country === undefined ? language : `${language}-${country}`;
}
