import type { closeUpRules } from '../../../rules/close-up/close-up-rules.ts';
import type { RuleWordsOf } from '../../../rules/rule-words.ts';

const putRight = 'Die Ursache suchen und beheben, bevor das Fahrzeug vom Hof fährt.';

/** What the rules of closing up say, in German. */
export const closeUpRulesDe: RuleWordsOf<typeof closeUpRules> = {
  'device-is-active': {
    summary: () => 'Das Gerät ist aktiv, bevor der Monteur geht.',
    why: 'Ein Gerät, das nicht meldet, ist ein zweiter Besuch.',
    says: {
      'not active': () => ({
        what: 'Das Gerät ist nicht aktiv.',
        whatToDo: 'Es freischalten lassen, solange man am Fahrzeug ist, oder aufschreiben, wer das wann tut.',
      }),
      'not recorded': () => ({
        what: 'Ob das Gerät aktiv ist, ist nicht notiert.',
        whatToDo: 'Beim Empfänger der Meldungen nachfragen und die Antwort eintragen.',
      }),
    },
  },
  'device-lamp-as-the-profile-says': {
    summary: () => 'Die Leuchte des Geräts zeigt, was sein Profil für den guten Zustand nennt.',
    why: 'Eine leuchtende Lampe ist der erste Beweis für den ganzen Stromkreis.',
    says: {
      'not recorded': ({ well }) => ({
        what: `Was die Leuchte zeigte, ist nicht notiert; sie soll „${well}“ zeigen.`,
        whatToDo: 'Die Leuchte bei eingeschalteter Zündung ansehen und eintragen.',
      }),
      'shows something else': ({ seen, well }) => ({
        what: `Die Leuchte zeigte „${seen}“; sie soll „${well}“ zeigen.`,
        whatToDo: 'Versorgung, Zündung und Masse am Gerät prüfen, dann den Empfang, bevor geschlossen wird.',
      }),
    },
  },
  'every-fastener-is-back': {
    summary: () => 'Jedes gelöste Befestigungsteil ist wieder in seinem eigenen Loch.',
    why: 'Eine fehlende Schraube klappert, und der Kunde findet sie.',
    says: {
      'not counted back': ({ name, fastener, out }) => ({
        what: `Aus „${name}“ kamen ${out} × „${fastener}“; wie viele zurückkamen, ist nicht notiert.`,
        whatToDo: 'Beim Einsetzen zählen und die Zahl eintragen.',
      }),
      'too many': ({ name, fastener, out, back }) => ({
        what: `Aus „${name}“ kamen ${out} × „${fastener}“, hinein gingen ${back}.`,
        whatToDo: 'Noch einmal zählen; in den Bemerkungen sagen, woher die übrigen kamen.',
      }),
      'too few': ({ name, fastener, out, back }) => ({
        what: `Aus „${name}“ kamen ${out} × „${fastener}“, zurück kamen ${back}.`,
        whatToDo: 'Die fehlenden suchen oder ersetzen.',
      }),
    },
  },
  'functions-work-again': {
    summary: () => 'Alles, was vor der Arbeit ging, geht nach ihr.',
    why: 'Was die Arbeit zerstört hat, findet der Fahrer, nachts.',
    says: {
      'does not work': (work) => ({
        what: `„${work.function}“ geht nach der Arbeit nicht und war vorher nicht so notiert.`,
        whatToDo: putRight,
      }),
    },
  },
  'plastics-not-over-tightened': {
    summary: () => 'Verkleidungsteile werden von Hand oder mit Drehmoment angezogen, nicht mit der Maschine.',
    why: 'Die Maschine überdreht den Kunststoff; dann hält die Schraube nichts mehr.',
    says: {
      'by power tool': ({ name, fastener }) => ({
        what: `„${fastener}“ von „${name}“ wurde mit der Maschine angezogen.`,
        whatToDo: 'Prüfen, ob jede noch greift; Verkleidungen nur handfest anziehen.',
      }),
    },
  },
  'supply-read-after': {
    summary: () => 'Die Versorgung wird nach der Arbeit noch einmal gemessen.',
    why: 'Nur eine Messung nach der Arbeit zeigt, dass sie das Fahrzeug gelassen hat, wie es war.',
    says: {
      'not read': () => ({
        what: 'Nach der Arbeit wurde die Versorgung nicht gemessen.',
        whatToDo: 'Batterie oder Versorgungsleitung bei laufendem Motor (fahrbereit) messen und eintragen.',
      }),
    },
  },
  'warning-lamps-no-worse': {
    summary: () => 'Nach der Arbeit leuchtet keine Warnleuchte, die vorher nicht leuchtete.',
    why: 'Eine Leuchte, die während der Arbeit anging, ist unsere, bis das Gegenteil bewiesen ist.',
    says: {
      'newly lit': ({ name }) => ({
        what: `Die Warnleuchte „${name}“ leuchtet nach der Arbeit und vorher nicht.`,
        whatToDo: putRight,
      }),
    },
  },
};
