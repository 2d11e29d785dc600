/** Working papers are in English, whatever language the articles are in. */
export const pageLang = (lang: string): string => (/^en\b/i.test(lang) ? lang : 'en');
