import type { Job } from '../records/job.ts';
import { something, whole } from './answers.ts';
import { isWorked } from './kinds-of-visit.ts';
import type { Question } from './question.ts';

type Panel = NonNullable<Job['panels']>[number];

const form = 'name / fastener / tool / how many out';

function panelFrom(text: string): Panel | null {
  const [name = '', fastener = '', tool = '', out = '', ...rest] = text.split('/').map((each) => each.trim());
  if (name === '' || fastener === '' || !/^\d{1,3}$/.test(out) || rest.length > 0) return null;
  return { name, fastener, ...(tool === '' ? {} : { tool }), out: Number(out) };
}

/** Panels opened, one line each; how they went back is asked at close-up. */
export const panelsOpened: Question = {
  id: 'panels',
  applies: isWorked,
  ask: async (job, ask) => {
    const panels: Panel[] = [];
    for (;;) {
      const text = await ask.text(`Panel ${panels.length + 1} opened (${form}; empty when no more)`, '', (each) =>
        each === '' || panelFrom(each) !== null ? null : `Type it as: ${form}.`,
      );
      const panel = text === '' ? null : panelFrom(text);
      if (panel === null) return { ...job, panels };
      panels.push(panel);
    }
  },
};

/** Close-up: every fastener back, and how it was tightened. */
export const panelsClosed: Question = {
  id: 'panels-closed',
  applies: (job) => (job.panels ?? []).length > 0,
  ask: async (job, ask) => {
    const panels: Panel[] = [];
    for (const panel of job.panels ?? []) {
      const back = await ask.text(
        `${panel.name}: of ${panel.out} × ${panel.fastener}, how many are back in?`,
        '',
        (text) => something(text) ?? whole(text),
      );
      const tightened = await ask.choose('Tightened', ['by hand', 'by torque', 'by power tool'], 'by hand');
      panels.push({ ...panel, in: Number(back), tightened });
    }
    return { ...job, panels };
  },
};
