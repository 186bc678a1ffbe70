// Sends the formula's form by itself when something changed and puts the answer's parts into the page.
import { complete } from './complete.js';

const WAIT = 500;
const PARTS = ['faults', 'balance', 'results'];

export function live(form) {
  let timer;
  let turn = 0;

  const send = async (submitter) => {
    clearTimeout(timer);
    const mine = ++turn;
    const body = new URLSearchParams(new FormData(form, submitter));
    const results = document.getElementById('results');
    results.setAttribute('aria-busy', 'true');
    const answer = await fetch(form.action, { method: 'POST', body, headers: { Accept: 'text/html' } }).catch(() => null);
    if (mine !== turn) return;
    results.removeAttribute('aria-busy');
    if (!answer?.ok) { form.submit(); return; }
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    if (mine !== turn) return;
    history.replaceState(null, '', answer.url.split('#')[0]);
    if (submitter || page.querySelectorAll('.line').length !== form.querySelectorAll('.line').length) { renew(page, submitter); return; }
    for (const id of PARTS) document.getElementById(id).replaceWith(page.getElementById(id));
    form.elements.namedItem('f').value = page.querySelector('input[name=f]').value;
    form.querySelector('[data-share]').href = page.querySelector('[data-share]').href;
    page.querySelectorAll('.amount input').forEach((input) => { const here = document.getElementById(input.id); if (here) here.placeholder = input.placeholder; });
    page.querySelectorAll('.line .fault').forEach((fault) => {
      const here = document.getElementById(fault.id);
      here.textContent = fault.textContent;
      const input = here.parentElement.querySelector('.amount input');
      if (input) input.toggleAttribute('aria-invalid', false);
      if (input && fault.textContent) { input.setAttribute('aria-invalid', 'true'); input.setAttribute('aria-describedby', fault.id); }
    });
  };

  const renew = (page, submitter) => {
    const bench = document.getElementById('formula');
    const fresh = page.getElementById('formula');
    bench.replaceWith(fresh);
    document.title = page.title;
    fresh.querySelectorAll('input[data-complete]').forEach(complete);
    fresh.querySelectorAll('[data-print]').forEach((button) => { button.hidden = false; });
    live(fresh.querySelector('form'));
    const last = fresh.querySelector('.line:last-child .amount input');
    const to = submitter?.name === 'remove' || !last || last.value ? fresh.querySelector('#add') : last;
    to?.focus();
  };

  form.addEventListener('input', (event) => {
    if (event.target.id === 'add') return;
    clearTimeout(timer);
    timer = setTimeout(() => send(null), WAIT);
  });
  form.addEventListener('submit', (event) => { event.preventDefault(); send(event.submitter ?? form.querySelector('button.main')); });
}
