// What pages gain with script: completion, live evaluation, tidy addresses. Everything works without it.
import { complete } from './complete.js';
import { live } from './live.js';

for (const input of document.querySelectorAll('input[data-complete]')) complete(input);
for (const form of document.querySelectorAll('form[data-live]')) live(form);

for (const form of document.querySelectorAll('form[data-tidy]')) {
  form.addEventListener('submit', () => {
    const empty = [...form.elements].filter((field) => field.name && field.value === '');
    empty.forEach((field) => { field.disabled = true; });
    setTimeout(() => empty.forEach((field) => { field.disabled = false; }));
  });
}

document.addEventListener('click', (event) => {
  if (event.target.closest('[data-print]')) window.print();
});
for (const button of document.querySelectorAll('[data-print]')) button.hidden = false;

// A citation that covers something can be put away without moving pointer or focus (WCAG 1.4.13).
document.addEventListener('keydown', (event) => {
  if (event.key === 'Escape') document.querySelectorAll('.cite:hover, .cite:focus-within').forEach((cite) => cite.classList.add('shut'));
});
for (const name of ['mouseout', 'focusout']) {
  document.addEventListener(name, (event) => event.target.closest?.('.cite')?.classList.remove('shut'));
}
