import type { closeUpRules } from '../../../rules/close-up/close-up-rules.ts';
import type { RuleWordsOf } from '../../../rules/rule-words.ts';

const putRight = 'Busque la causa y arréglela antes de que salga el vehículo.';

/** What the rules of closing up say, in Spanish. */
export const closeUpRulesEs: RuleWordsOf<typeof closeUpRules> = {
  'device-is-active': {
    summary: () => 'El aparato está activo antes de que se marche el instalador.',
    why: 'Un aparato que no comunica es una segunda visita.',
    says: {
      'not active': () => ({
        what: 'El aparato no está activo.',
        whatToDo: 'Haga que lo activen mientras está junto al vehículo, o anote quién lo hará y cuándo.',
      }),
      'not recorded': () => ({
        what: 'No consta si el aparato está activo.',
        whatToDo: 'Pregunte a quien recibe sus datos y anote la respuesta.',
      }),
    },
  },
  'device-lamp-as-the-profile-says': {
    summary: () => 'El testigo del aparato muestra lo que dice su ficha cuando todo va bien.',
    why: 'Un testigo encendido es la primera prueba de todo el circuito.',
    says: {
      'not recorded': ({ well }) => ({
        what: `No consta qué mostraba el testigo; debería mostrar «${well}».`,
        whatToDo: 'Mire el testigo con el contacto dado y anótelo.',
      }),
      'shows something else': ({ seen, well }) => ({
        what: `El testigo mostraba «${seen}»; debería mostrar «${well}».`,
        whatToDo: 'Compruebe alimentación, encendido y masa en el aparato, y después la recepción, antes de cerrar.',
      }),
    },
  },
  'every-fastener-is-back': {
    summary: () => 'Cada fijación que se quitó está de nuevo en su sitio.',
    why: 'Un tornillo que falta hace ruido, y lo encuentra el cliente.',
    says: {
      'not counted back': ({ name, fastener, out }) => ({
        what: `De «${name}» salieron ${out} de «${fastener}»; no consta cuántos volvieron.`,
        whatToDo: 'Cuéntelos al montar y anote el número.',
      }),
      'too many': ({ name, fastener, out, back }) => ({
        what: `De «${name}» salieron ${out} de «${fastener}» y entraron ${back}.`,
        whatToDo: 'Cuente otra vez; diga en las notas de dónde salieron los demás.',
      }),
      'too few': ({ name, fastener, out, back }) => ({
        what: `De «${name}» salieron ${out} de «${fastener}» y volvieron ${back}.`,
        whatToDo: 'Busque o reponga los que faltan.',
      }),
    },
  },
  'functions-work-again': {
    summary: () => 'Todo lo que funcionaba antes del trabajo funciona después.',
    why: 'Lo que el trabajo estropeó lo encuentra el conductor, de noche.',
    says: {
      'does not work': (work) => ({
        what: `«${work.function}» no funciona después del trabajo y antes no constaba así.`,
        whatToDo: putRight,
      }),
    },
  },
  'plastics-not-over-tightened': {
    summary: () => 'Las fijaciones de los plásticos se aprietan a mano o con par, no a máquina.',
    why: 'La máquina pasa de rosca el plástico; el tornillo ya no sujeta nada.',
    says: {
      'by power tool': ({ name, fastener }) => ({
        what: `«${fastener}» de «${name}» se apretó a máquina.`,
        whatToDo: 'Compruebe que cada uno agarra todavía; apriete los plásticos a mano, solo hasta el tope.',
      }),
    },
  },
  'supply-read-after': {
    summary: () => 'La batería se lee de nuevo después del trabajo.',
    why: 'Solo una lectura posterior muestra que el trabajo dejó el vehículo como estaba.',
    says: {
      'not read': () => ({
        what: 'No se tomó ninguna lectura de alimentación después del trabajo.',
        whatToDo: 'Lea la batería o el cable de alimentación con el motor en marcha (o listo) y anótelo.',
      }),
    },
  },
  'warning-lamps-no-worse': {
    summary: () => 'Tras el trabajo no hay encendido ningún testigo que antes no lo estuviera.',
    why: 'Un testigo que se encendió durante el trabajo es nuestro hasta que se demuestre otra cosa.',
    says: {
      'newly lit': ({ name }) => ({
        what: `El testigo «${name}» está encendido después del trabajo y antes no lo estaba.`,
        whatToDo: putRight,
      }),
    },
  },
};
