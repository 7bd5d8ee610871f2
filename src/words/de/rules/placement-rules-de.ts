import { heatMillimetresMin } from '../../../rules/placement/away-from-heat-sources.ts';
import { personMillimetresUsual } from '../../../rules/placement/distance-from-people.ts';
import type { placementRules } from '../../../rules/placement/placement-rules.ts';
import type { RuleWordsOf } from '../../../rules/rule-words.ts';
import { termsDe } from '../terms-de.ts';

const blocked = {
  vent: 'eine Lüftungsdüse',
  view: 'die Sicht',
  control: 'ein Bedienteil',
  'seat travel': 'den Sitzweg',
  hatch: 'eine Klappe',
};
const lies = {
  'label up': 'mit dem Schild nach oben',
  'label down': 'mit dem Schild nach unten',
  'on edge': 'hochkant',
  any: 'in keiner bestimmten Lage',
};
const fixIt = 'Befestigen, bis es sich unter der Hand nicht bewegt.';
const keepDry = 'An eine trockene Stelle versetzen oder ein dichtes Gerät einbauen.';
const moveOnGlass =
  'Nach oben oder unten versetzen, bis eine der beiden Grenzen eingehalten ist, oder von der Scheibe weg.';
const outOfSweep = 'Aus dem Wischfeld versetzen und eintragen, dass es außerhalb ist.';
const localCode = 'Das Gerät sitzt an der Windschutzscheibe; was dort sitzen darf, sagt die örtliche Vorschrift.';

/** What the rules of placement say, in German. */
export const placementRulesDe: RuleWordsOf<typeof placementRules> = {
  'away-from-heat-sources': {
    summary: () =>
      `Das Gerät hält Abstand von Heizkanälen, Auspuff und anderen heißen Teilen (${heatMillimetresMin} mm, oder was sein Profil sagt).`,
    why: 'Neben einem Kanal oder Rohr ist es heißer als an der Stelle insgesamt, und Kleber und Binder lassen los.',
    says: {
      'too near': ({ distance, least }) => ({
        what: `Das Gerät sitzt ${distance} mm von einem heißen Teil; mindestens ${least} mm.`,
        whatToDo: 'Wegrücken, oder einen Schirm dazwischensetzen und aufschreiben, was für einen.',
      }),
    },
  },
  'clear-of-air-bags': {
    summary: () => 'Gerät und Kabelbaum sind aus dem Weg jedes Airbags.',
    why: 'Ein aufgehender Sack schleudert, was in seinem Weg ist, auf den Insassen, oder entfaltet sich nicht.',
    says: {
      'in the path': ({ distance }) => ({
        what: `Das Gerät ist im Weg eines Airbags${distance === null ? '' : `, ${distance} mm von ihm`}.`,
        whatToDo: 'Gerät und Kabelbaum aus dem Weg nehmen, bevor das Fahrzeug vom Hof fährt.',
      }),
      'not recorded': () => ({
        what: 'Ob das Gerät im Weg eines Airbags ist, ist nicht notiert.',
        whatToDo: 'Nach den Airbag-Zeichen an Verkleidungen und Säulen sehen und die Antwort eintragen.',
      }),
    },
  },
  'clear-of-head-strike-areas': {
    summary: () => 'Das Gerät ist nicht dort, wo bei einem Unfall Kopf oder Knie aufschlagen.',
    why: 'Ein harter Kasten macht aus einer gepolsterten Fläche eine Kante.',
    says: {
      'in a strike area': () => ({
        what: 'Das Gerät ist in einem Bereich, wo Kopf oder Knie aufschlagen können.',
        whatToDo: 'Hinter die Verkleidung oder außer Reichweite von Kopf und Knien versetzen.',
      }),
    },
  },
  'device-is-firm': {
    summary: () => 'Das Gerät sitzt fest und kann sich nicht losrütteln.',
    why: 'Ein loses Gerät zieht an seinen Leitungen, klappert, stört seinen Bewegungssensor und kann zwischen die Pedale fallen.',
    says: {
      loose: () => ({ what: 'Das Gerät ist lose eingelegt.', whatToDo: fixIt }),
      'not firm': ({ fixing }) => ({
        what: `Das Gerät sitzt nicht fest (gehalten von ${termsDe.fixings[fixing]}).`,
        whatToDo: fixIt,
      }),
      'not recorded': () => ({
        what: 'Ob das Gerät fest sitzt, ist nicht notiert.',
        whatToDo: 'Mit der Hand dagegendrücken und eintragen, ob es sich bewegt.',
      }),
    },
  },
  'distance-from-people': {
    summary: () =>
      `Ein sendendes Gerät ist mindestens ${personMillimetresUsual} mm von Menschen entfernt, oder so weit, wie sein Profil sagt.`,
    why: 'Seine Funkzulassung beruht auf diesem Abstand.',
    says: {
      'not recorded': ({ least }) => ({
        what: `Der Abstand des Geräts von Menschen ist nicht notiert; verlangt sind ${least} mm oder mehr.`,
        whatToDo: 'Bis zur nächsten Stelle messen, wo jemand sitzt oder steht.',
      }),
      'too near': ({ distance, least }) => ({
        what: `Das Gerät ist ${distance} mm von Menschen entfernt; verlangt sind ${least} mm oder mehr.`,
        whatToDo: `Mindestens ${least} mm von jedem Sitz entfernt anbringen.`,
      }),
    },
  },
  'does-not-block-view-vents-or-controls': {
    summary: () => 'Das Gerät versperrt weder Sicht, Lüftung, Bedienteil, Sitzweg noch Klappe.',
    why: 'Was versperrt ist, fehlt dem nächsten Fahrer, und im falschen Augenblick.',
    says: {
      blocks: (device) => ({
        what: `Das Gerät versperrt ${blocked[device.blocked]}.`,
        whatToDo: 'Versetzen, bis nichts versperrt ist.',
      }),
    },
  },
  'dry-or-sealed': {
    summary: () => 'Das Gerät sitzt trocken oder ist wasserdicht.',
    why: 'Wasser in einem undichten Gerät ist sein Ende, manchmal Monate später.',
    says: {
      'zone is wet': ({ zone }) => ({
        what: `Wasser erreicht diese Zone (${termsDe.zones[zone][0]}), und das Gerät ist nicht dicht.`,
        whatToDo: keepDry,
      }),
      'place is wet': () => ({ what: 'Die Stelle ist nass, und das Gerät ist nicht wasserdicht.', whatToDo: keepDry }),
    },
  },
  'fixing-points-suffice': {
    summary: () => 'Das Gerät ist an zwei Punkten oder mehr gehalten, von einem Klebepad, oder wie sein Profil sagt.',
    why: 'An einem Punkt gehalten dreht sich ein Gerät und arbeitet sich los.',
    says: {
      'too few': ({ points, least }) => ({
        what: `Das Gerät ist an ${points} ${points === 1 ? 'Punkt' : 'Punkten'} gehalten; verlangt sind ${least} oder mehr.`,
        whatToDo: 'Befestigungspunkte ergänzen.',
      }),
    },
  },
  'not-within-casual-reach': {
    summary: () => 'Das Gerät ist nicht in Reichweite jeder Hand.',
    why: 'Was eine Hand findet, zieht eine Hand ab.',
    says: {
      'within reach': () => ({
        what: 'Das Gerät ist von Hand ohne Werkzeug erreichbar.',
        whatToDo: 'Hinter eine Verkleidung versetzen oder dem Kunden sagen.',
      }),
    },
  },
  'orientation-as-the-profile-says': {
    summary: () => 'Das Gerät liegt, wie sein Profil sagt.',
    why: 'Die Antenne sieht aus einer Seite, und Bewegungssensoren sind für eine Lage eingestellt.',
    says: {
      'lies otherwise': (device) => ({
        what: `Das Gerät liegt ${lies[device.lies]}; sein Profil verlangt ${lies[device.wanted]}.`,
        whatToDo: `Drehen: ${lies[device.wanted]}.`,
      }),
    },
  },
  'reachable-for-service': {
    summary: () => 'Das Gerät ist mit Werkzeug erreichbar, wenn es gewartet werden muss.',
    why: 'Ein Gerät, an das man nicht kommt, kostet den nächsten Besuch eine Stunde.',
    says: {
      'out of reach': () => ({
        what: 'Das Gerät ist mit Werkzeug nicht erreichbar.',
        whatToDo: 'Versetzen, oder in der Bemerkung sagen, welche Verkleidungen ab müssen.',
      }),
    },
  },
  'sky-above-the-antenna-is-not-metal': {
    summary: () => 'Zwischen Antenne und Himmel liegt kein Metall.',
    why: 'Metall darüber verdeckt die Satelliten: Positionen springen oder bleiben stehen.',
    says: {
      'metal above': () => ({
        what: 'Über der Antenne ist Metall.',
        whatToDo: 'Das Gerät unter Kunststoff, Stoff oder einfaches Glas versetzen.',
      }),
      'coated glass above': () => ({
        what: 'Das Glas über der Antenne ist beheizt oder metallbeschichtet.',
        whatToDo: 'Den Empfang vor dem Schließen beweisen, oder das Gerät unter Kunststoff versetzen.',
      }),
    },
  },
  'windscreen-area-is-respected': {
    summary: () => 'An der Windschutzscheibe bleibt das Gerät im erlaubten Bereich und aus den Sichtlinien.',
    why: 'Weiter unten verdeckt ein Gerät Straße, Schilder und Ampeln, und der Halter wird belangt.',
    says: {
      'in the sight line': () => ({
        what: 'Das Gerät ist in der Sichtlinie des Fahrers auf Straße, Schilder oder Ampeln.',
        whatToDo: 'Aus der Sichtlinie versetzen.',
      }),
      'local code': () => ({
        what: localCode,
        whatToDo: 'In der örtlichen Vorschrift nachsehen oder das Gerät von der Scheibe nehmen.',
      }),
      'local code of Great Britain': (zone, voice) => ({
        what: localCode,
        whatToDo: `In der örtlichen Vorschrift nachsehen. Großbritannien, MOT-Prüfhandbuch, Abschnitt 3: vor dem Fahrer (${zone.wide} mm breit; über ${voice.decimal(zone.tonnes)} t ${zone.wideAboveLimit} mm) dürfen höchstens ${zone.most} mm ins Wischfeld ragen, sonst darin ${zone.mostElsewhere} mm.`,
      }),
      'not measured in the swept area': ({ below, above }) => ({
        what: 'Die Lage des Geräts im Wischfeld ist nicht gemessen.',
        whatToDo: `Von seiner Unterkante bis zum oberen Rand des Wischfelds messen (höchstens ${below} mm), oder von seiner Oberkante bis zum unteren (höchstens ${above} mm).`,
      }),
      'too far below the top': ({ below, belowMost }) => ({
        what: `Das Gerät reicht ${below} mm unter den oberen Rand des Wischfelds (höchstens ${belowMost} mm).`,
        whatToDo: moveOnGlass,
      }),
      'too far above the bottom': ({ above, aboveMost }) => ({
        what: `Das Gerät reicht ${above} mm über den unteren Rand des Wischfelds (höchstens ${aboveMost} mm).`,
        whatToDo: moveOnGlass,
      }),
      'too far from both': ({ below, belowMost, above, aboveMost }) => ({
        what: `Das Gerät reicht ${below} mm unter den oberen Rand des Wischfelds (höchstens ${belowMost} mm) und ${above} mm über den unteren (höchstens ${aboveMost} mm).`,
        whatToDo: moveOnGlass,
      }),
      'not measured from the glass': ({ below }) => ({
        what: 'Der Abstand des Geräts von der Oberkante der Scheibe ist nicht gemessen.',
        whatToDo: `Von seiner Unterkante bis zur Oberkante der Windschutzscheibe messen: höchstens ${below} mm.`,
      }),
      'too far below the glass top': ({ below, belowMost }) => ({
        what: `Das Gerät reicht ${below} mm unter die Oberkante der Windschutzscheibe; höchstens ${belowMost} mm.`,
        whatToDo: 'Höher setzen oder von der Scheibe nehmen.',
      }),
      'in the swept area': () => ({
        what: 'Das Gerät ist im Wischfeld, wo keine Antenne sitzen darf.',
        whatToDo: outOfSweep,
      }),
      'swept area not recorded': () => ({
        what: 'Ob die Wischer über das Gerät laufen, ist nicht notiert.',
        whatToDo: outOfSweep,
      }),
    },
  },
  'windscreen-mount-as-the-profile-says': {
    summary: () => 'An der Windschutzscheibe sitzt nur ein dafür gebautes Gerät.',
    why: 'Sonne hinter Glas heizt es stärker als eine Kabine, und eine nicht für Glas gemachte Halterung löst sich dem Fahrer ins Gesicht.',
    says: {
      'not made for it': ({ name }) => ({
        what: `${name} sitzt an der Windschutzscheibe, und sein Profil sagt nicht, dass es dafür gebaut ist.`,
        whatToDo: 'Ins Armaturenbrett versetzen, oder aufschreiben, was der Hersteller sagt und wie es gehalten ist.',
      }),
    },
  },
  'within-heat-limit': {
    summary: () => 'Die Stelle bleibt in den Temperaturen, die das Gerät verträgt.',
    why: 'Über seiner Grenze versagt ein Gerät oder seine Batterie; darunter wacht es nicht auf.',
    says: {
      'too hot': ({ celsius, most }) => ({
        what: `Die Stelle kann ${celsius} °C erreichen; das Gerät verträgt ${most} °C.`,
        whatToDo: 'An eine kühlere Stelle versetzen, weg von Heizkanälen und Sonne.',
      }),
      'too cold': ({ celsius, least }) => ({
        what: `Die Stelle kann auf ${celsius} °C fallen; das Gerät arbeitet bis ${least} °C.`,
        whatToDo: 'Nach innen versetzen oder ein für solche Kälte gebautes Gerät einbauen.',
      }),
      'engine bay, heat not recorded': ({ most }) => ({
        what: `Das Gerät sitzt im Motorraum, und die Hitze dort ist nicht notiert; es verträgt ${most} °C.`,
        whatToDo: 'Nach warmer Fahrt daneben messen und eintragen, oder das Gerät herausnehmen.',
      }),
    },
  },
};
