/** What languages are called where one is chosen. */
export const languageNames = new Intl.DisplayNames('en', { type: 'language' });
