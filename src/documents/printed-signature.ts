import type { Job } from '../records/job.ts';
import type { Writing } from '../words/writing.ts';

/** Widest and highest that a drawn signature is printed, millimetres. */
const widthMax = 80;
const heightMax = 16;

/**
 * What the sheet says of the customer's signature, with its strokes to scale.
 * @param job the job
 * @param isVoid whether the record was changed after signing
 * @param writing the document's words
 */
export function printedSignature(job: Job, isVoid: boolean, writing: Writing) {
  const { signature } = job;
  const { sentences } = writing;
  const isSigned = signature !== undefined && signature.answer !== 'not available';
  const drawn = isSigned
    ? drawnStrokes(signature.strokes ?? [], signature.strokesWidth, signature.strokesHeight)
    : null;
  return {
    isSigned,
    line:
      isSigned && signature.answer !== 'not available'
        ? sentences.signed(
            signature.answer,
            signature.name ?? null,
            signature.signedAt === undefined ? null : writing.moment(signature.signedAt),
          )
        : '',
    hasRemark: signature?.remark !== undefined,
    remark: signature?.remark ?? '',
    isVoid: isSigned && isVoid,
    isDrawn: drawn !== null,
    // whoever signed on paper, or before the record was changed, needs the line
    hasLine: drawn === null || isVoid,
    // an answer that is known already is not asked again
    hasChoice: !isSigned || isVoid,
    lineHeight: drawn === null ? '9' : drawn.height,
    strokes: drawn?.strokes ?? [],
    width: drawn?.width ?? '0',
    height: drawn?.height ?? '0',
    hasNoReason: signature?.noSignatureBecause !== undefined && !isSigned,
    noReason:
      signature?.noSignatureBecause === undefined || isSigned ? '' : sentences.notSigned(signature.noSignatureBecause),
  };
}

function drawnStrokes(
  strokes: readonly (readonly number[])[],
  widthGiven: number | undefined,
  heightGiven: number | undefined,
) {
  const points = strokes.map((stroke) =>
    Array.from(
      { length: Math.floor(stroke.length / 2) },
      (_, index) => [stroke[2 * index] ?? 0, stroke[2 * index + 1] ?? 0] as const,
    ),
  );
  const all = points.flat();
  if (all.length === 0) return null;
  const width = Math.max(widthGiven ?? 0, ...all.map(([x]) => x), 1);
  const height = Math.max(heightGiven ?? 0, ...all.map(([, y]) => y), 1);
  const scale = Math.min(widthMax / width, heightMax / height);
  const at = (value: number) => (value * scale).toFixed(2);
  return {
    strokes: points
      .filter((stroke) => stroke.length > 0)
      // a dot is a stroke of one point: a hair's breadth makes it seen
      .map((stroke) => (stroke.length === 1 ? [...stroke, ...stroke.map(([x, y]) => [x + 30, y] as const)] : stroke))
      .map((stroke) => ({ points: stroke.map(([x, y]) => `${at(x)},${at(y)}`).join(' ') })),
    width: at(width),
    height: at(height),
  };
}
