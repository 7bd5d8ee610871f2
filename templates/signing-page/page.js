const form = document.querySelector('#signing');
const canvas = document.querySelector('#pad');
const typed = document.querySelector('#typed');
const drawing = document.querySelector('#drawing');
const send = document.querySelector('#send');
const failed = document.querySelector('#failed');
const done = document.querySelector('#done');
const pad = new window.SignaturePad(canvas, { minWidth: 0.8, maxWidth: 2.2, minDistance: 2, penColor: '#111111' });
// a CSS pixel is 1/96 inch; strokes are kept in hundredths of a millimetre
const hundredthsPerPixel = 2540 / 96;
const pointsMax = 20000;
const numbersPerStrokeMax = 4000;
const strokesMax = 200;

function fitPad() {
  if (canvas.clientWidth === 0) return;
  const ratio = Math.max(window.devicePixelRatio || 1, 1);
  const strokes = pad.toData();
  canvas.width = Math.round(canvas.clientWidth * ratio);
  canvas.height = Math.round(canvas.clientHeight * ratio);
  canvas.getContext('2d').scale(ratio, ratio);
  pad.clear();
  pad.fromData(strokes);
}

function tell(id, wrong) {
  const place = document.querySelector(`#${id}-error`);
  place.textContent = wrong ? place.dataset.says : '';
  for (const field of form.querySelectorAll(
    `input[aria-describedby="${place.id}"], textarea[aria-describedby="${place.id}"]`,
  ))
    field.setAttribute('aria-invalid', String(wrong));
  return wrong;
}

function hundredths(pixels) {
  return Math.max(Math.round(pixels * hundredthsPerPixel), 0);
}

function inPieces(numbers) {
  const pieces = [];
  for (let start = 0; start < numbers.length; start += numbersPerStrokeMax) {
    pieces.push(numbers.slice(start, start + numbersPerStrokeMax));
  }
  return pieces;
}

function drawn() {
  const strokes = pad
    .toData()
    .flatMap((group) => inPieces(group.points.flatMap((point) => [hundredths(point.x), hundredths(point.y)])));
  // a screen turned after drawing is narrower than the strokes
  const farthest = (place) =>
    strokes.flat().reduce((most, each, index) => (index % 2 === place ? Math.max(most, each) : most), 1);
  return {
    strokes,
    strokesWidth: Math.max(hundredths(canvas.clientWidth), farthest(0)),
    strokesHeight: Math.max(hundredths(canvas.clientHeight), farthest(1)),
  };
}

function answerOf() {
  const fields = new FormData(form);
  const remark = fields.get('remark').replace(/\s+/g, ' ').trim();
  return {
    answer: fields.get('answer'),
    name: fields.get('name').trim(),
    ...(remark === '' ? {} : { remark }),
    ...(typed.checked || pad.isEmpty() ? {} : drawn()),
  };
}

function firstWrong(answer) {
  const remarkMissing = answer.answer !== null && answer.answer !== 'accepts' && answer.remark === undefined;
  const signatureMissing = !typed.checked && answer.strokes === undefined && answer.answer !== 'refuses';
  const wrong = [
    [tell('name', answer.name === ''), '#name'],
    [tell('answer', answer.answer === null), 'input[name="answer"]'],
    [tell('remark', remarkMissing), '#remark'],
    [tell('signature', signatureMissing), '#typed'],
  ].find(([isWrong]) => isWrong);
  return wrong === undefined ? null : document.querySelector(wrong[1]);
}

typed.addEventListener('change', () => {
  drawing.hidden = typed.checked;
  if (!typed.checked) fitPad();
});
document.querySelector('#clear').addEventListener('click', () => pad.clear());
document.querySelector('#undo').addEventListener('click', () => pad.fromData(pad.toData().slice(0, -1)));
pad.addEventListener('beginStroke', (event) => {
  const points = pad.toData().reduce((sum, group) => sum + group.points.length, 0);
  if (points > pointsMax / 2 || pad.toData().length >= strokesMax) event.preventDefault();
});
new ResizeObserver(fitPad).observe(canvas);

form.addEventListener('submit', async (event) => {
  event.preventDefault();
  failed.textContent = '';
  const answer = answerOf();
  const wrong = firstWrong(answer);
  if (wrong !== null) return wrong.focus();
  send.disabled = true;
  send.textContent = form.dataset.sending;
  try {
    const response = await fetch(window.location.pathname, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(answer),
    });
    if (!response.ok) throw new Error(await response.text());
    form.hidden = true;
    done.textContent = form.dataset.done;
    done.focus();
  } catch (error) {
    failed.textContent = `${form.dataset.failed} (${error.message})`;
    send.disabled = false;
    send.textContent = form.dataset.send;
  }
});
