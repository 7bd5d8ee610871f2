import type { SigningSheet } from '../../src/phone/signing-sheet.ts';

/** An invented sheet with signs that a page must not take for markup. */
export const sampleSheet: SigningSheet = {
  language: 'en',
  title: 'Handover sheet 2026-11-24-KX4D',
  business: 'Fitting & Co <script>alert(1)</script>',
  facts: [
    { name: 'Vehicle', value: 'Corvane Haul 150 "B-17"' },
    { name: 'Owner', value: 'Bluestem Parcel' },
  ],
  sections: [
    { heading: 'What was done', paragraphs: ['A device was fitted.', 'It works.'], items: [] },
    { heading: 'Notes', paragraphs: [], items: ['Do not cover it.', '{{name}} & <b>bold</b>'] },
  ],
  statement: 'Your answer is kept.',
  record: `Record ${'a'.repeat(64)}`,
};
