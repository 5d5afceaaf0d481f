// What the page says in its languages, and what must not be left of English in the others.

import assert from 'node:assert/strict';
import { assertAccessible } from './accessibility.mjs';
import { looksRight } from './fits.mjs';
import { eventually } from './steps.mjs';

// The names that a test needs to find its way.
export const tongues = {
  en: {
    locale: 'en-GB',
    languages: 'Language',
    own: 'English',
    stages: ['Received', 'Wanted', 'Plan', 'Cut', 'Hand back'],
    menu: 'Menu',
    close: 'Close',
    share: 'Share',
    owner: 'The part’s owner',
    copyLink: 'Copy the link',
    rates: 'Your rates',
    agreeWithChange: 'I agree, with a change',
    change: 'What is to be changed',
    name: 'Your name, if you like',
    copyAnswer: 'Copy the answer',
    acts: 'What to do with this step',
    measure: 'Measure',
    keep: 'Keep',
    erase: 'Erase',
    mark: 'Decimal mark',
    rightReading: 'It is right',
    printSheet: 'Print the job sheet',
    sheet: 'Job sheet',
    shareReport: 'Share the report’s link',
  },
  de: {
    locale: 'de-DE',
    languages: 'Sprache',
    own: 'Deutsch',
    stages: ['Ist', 'Soll', 'Plan', 'Drehen', 'Abgabe'],
    menu: 'Menü',
    close: 'Zu',
    share: 'Teilen',
    owner: 'Für den Besitzer',
    copyLink: 'Link kopieren',
    rates: 'Die eigenen Sätze',
    agreeWithChange: 'Einverstanden, mit einer Änderung',
    change: 'Was zu ändern ist',
    name: 'Name, wenn gewünscht',
    copyAnswer: 'Antwort kopieren',
    acts: 'Was mit diesem Schritt zu tun ist',
    measure: 'Messen',
    keep: 'Behalten',
    erase: 'Löschen',
    mark: 'Komma',
    rightReading: 'Sie stimmt',
    printSheet: 'Auftragsblatt drucken',
    sheet: 'Auftragsblatt',
    shareReport: 'Link des Berichts teilen',
    // Titles of books and standards are in their own language.
    source: /Zahlen (in (einer|zwei) Quellen?|aus dem)/,
    // Words that German shares with English.
    same: ['Bronze'],
  },
  es: {
    locale: 'es-ES',
    languages: 'Idioma',
    own: 'Español',
    stages: ['Recibido', 'Deseado', 'Plan', 'Torno', 'Entrega'],
    menu: 'Menú',
    close: 'Cerrar',
    share: 'Compartir',
    owner: 'El dueño de la pieza',
    copyLink: 'Copiar enlace',
    rates: 'Tus tarifas',
    agreeWithChange: 'De acuerdo, con un cambio',
    change: 'Qué hay que cambiar',
    name: 'Tu nombre, si quieres',
    copyAnswer: 'Copiar respuesta',
    acts: 'Qué hacer con este paso',
    measure: 'Medir',
    keep: 'Guardar',
    erase: 'Borrar',
    mark: 'Signo decimal',
    rightReading: 'Es correcta',
    printSheet: 'Imprimir la hoja',
    sheet: 'Hoja de trabajo',
    shareReport: 'Compartir el informe',
    source: /cifras (vistas en (una|dos) fuentes?|de la)/,
    same: ['Material'],
  },
};

// Words of English that no German and no Spanish text has.
export const english = /\b(the|and|of|with|from|this|what|by|shank|shoulder|head|length|pass|passes|cut|feed|speed|infeed|part|job|hole|undo|share|remove|add|off|received|wanted|finished|largest|each|usual|empty|name of|take|show|more|none|weight|cost|when|where|is|are|to)\b/i;

// Names that are the same in all languages, and units.
const names = ['Skimwright', 'English', 'Deutsch', 'Español', 'Plan'];
const units = /(?<!\p{L})(mm\/rev|in\/rev|m\/min|ft\/min|mm|µm|in|min|rpm|lbf|js\d+)(?!\p{L})/gu;

// What the standards call their tapers.
const designations = /^(Morse|Brown & Sharpe|Jarno|Jacobs|Metric) \d+( short)?$/;

// Words, where a text has more than units and codes such as those of standards and threads.
const hasWords = (text) => !designations.test(text) && /\p{Ll}{2}/u.test(text.replace(units, ''));

// All that can be read or heard on the page.
export const texts = (page) => page.evaluate(() => {
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const { data, parentElement } = walker.currentNode;
    if (/\p{L}{2}|\d/u.test(data) && !['SCRIPT', 'NOSCRIPT', 'STYLE'].includes(parentElement.tagName)) {
      found.push(data);
    }
  }
  for (const name of ['aria-label', 'placeholder', 'title', 'alt', 'aria-valuetext']) {
    document.querySelectorAll(`[${name}]`).forEach((element) => found.push(element.getAttribute(name)));
  }
  return found;
});

export const rootLanguage = (page) => page.evaluate(() => document.documentElement.lang);

// Opens all that is closed; what is opened can hold more that is closed.
export async function openAll(page) {
  for (let round = 0; round < 3; round += 1) {
    const closed = page.locator('.columns button[aria-expanded=false]').filter({ visible: true });
    for (let left = await closed.count(); left > 0; left -= 1) {
      await closed.first().click();
    }
  }
  await page.evaluate(() => document.querySelectorAll('details').forEach((it) => it.setAttribute('open', '')));
}

// Notes what English says at each place, to know it again on the page of another language.
export function listener() {
  const heard = new Map();
  return {
    heard,
    look: async (page, where) => heard.set(where, new Set((await texts(page)).map((text) => text.trim()))),
  };
}

// Looks at each place of a page that is not in English; what is wrong is gathered, to be seen all at once.
export function reader(code, heard) {
  const { source, same } = tongues[code];
  const [seen, wrong] = [[], []];
  const none = (where, what, found) => {
    if (found.length > 0) {
      wrong.push(`${where}: ${what}: ${[...new Set(found)].join(' | ')}`);
    }
  };
  const holds = (where, check) => check.catch((error) => wrong.push(`${where}: ${error.message}`));
  const look = async (page, where, { width = 360, accessible = true } = {}) => {
    seen.push(where);
    assert.equal(await rootLanguage(page), code, where);
    const found = (await texts(page)).map((text) => text.trim()).filter((text) => !source.test(text));
    const there = heard.get(where);
    assert.ok(there?.size > 20, `${where} in English: ${there?.size}`);
    none(where, 'English', found.filter((text) => english.test(text.replace('English', ''))));
    none(where, 'as in English', found.filter((text) => there.has(text) && hasWords(text) && ![...names, ...same].includes(text)));
    none(where, 'decimal points', found.filter((text) => /(?<!\p{L}\d*)\d\.\d/u.test(text)));
    await holds(where, looksRight(page, width, where));
    if (accessible) {
      await holds(where, assertAccessible(page));
    }
  };
  return { seen, wrong, look };
}

// To another stage, by its place among them.
export async function toStageOf(page, tongue, index) {
  const bar = page.getByRole('navigation');
  await bar.getByRole('button', { name: tongue.stages[index], exact: true }).click();
  await eventually(async () => assert.equal(
    await bar.locator('[aria-current=page]').textContent(),
    tongue.stages[index],
  ));
}
