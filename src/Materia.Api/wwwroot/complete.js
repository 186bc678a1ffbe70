// A combobox over /v1/suggestions (WAI-ARIA APG: editable combobox with list autocomplete).
const WAIT = 120;
let made = 0;

export function complete(input) {
  const list = document.createElement('ul');
  list.className = 'options';
  list.id = `options-${++made}`;
  list.hidden = true;
  list.setAttribute('role', 'listbox');
  list.setAttribute('aria-label', input.labels?.[0]?.textContent ?? '');
  input.parentElement.after(list);
  for (const [name, value] of Object.entries({ role: 'combobox', 'aria-autocomplete': 'list', 'aria-expanded': 'false', 'aria-controls': list.id })) {
    input.setAttribute(name, value);
  }

  let timer;
  let asked = 0;
  let at = -1;

  const close = () => { list.hidden = true; at = -1; input.setAttribute('aria-expanded', 'false'); input.removeAttribute('aria-activedescendant'); };
  const mark = (next) => {
    const items = [...list.children];
    at = (next + items.length) % items.length;
    items.forEach((item, i) => item.setAttribute('aria-selected', String(i === at)));
    input.setAttribute('aria-activedescendant', items[at].id);
    items[at].scrollIntoView({ block: 'nearest' });
  };
  const choose = (item) => {
    const { id } = item.dataset;
    input.value = item.textContent;
    close();
    if (input.dataset.complete === 'go') { location.assign(`/ingredients/${encodeURIComponent(id)}`); return; }
    if (input.dataset.complete === 'add') input.form.elements.namedItem('addId').value = id;
    else input.value = id;
    input.form.requestSubmit();
  };
  const ask = async () => {
    const text = input.value.trim();
    const mine = ++asked;
    if (text.length < 2) { close(); return; }
    const answer = await fetch(`/v1/suggestions?limit=8&text=${encodeURIComponent(text)}`, { headers: { Accept: 'application/json' } }).catch(() => null);
    if (!answer?.ok || mine !== asked || document.activeElement !== input) return;
    const { items } = await answer.json();
    list.replaceChildren(...items.map((item, i) => {
      const option = document.createElement('li');
      option.id = `${list.id}-${i}`;
      option.dataset.id = item.ingredient;
      option.textContent = item.text;
      option.setAttribute('role', 'option');
      option.setAttribute('aria-selected', 'false');
      return option;
    }));
    list.hidden = items.length === 0;
    at = -1;
    input.setAttribute('aria-expanded', String(!list.hidden));
    input.removeAttribute('aria-activedescendant');
  };

  input.addEventListener('input', () => { clearTimeout(timer); timer = setTimeout(ask, WAIT); });
  input.addEventListener('blur', () => setTimeout(close, 150));
  input.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && !list.hidden) { close(); event.preventDefault(); return; }
    if (list.hidden) return;
    if (event.key === 'ArrowDown') { mark(at + 1); event.preventDefault(); }
    else if (event.key === 'ArrowUp') { mark(at < 0 ? -1 : at - 1); event.preventDefault(); }
    else if (event.key === 'Enter' && at >= 0) { choose(list.children[at]); event.preventDefault(); }
  });
  list.addEventListener('mousedown', (event) => event.preventDefault());
  list.addEventListener('click', (event) => { const item = event.target.closest('li'); if (item) choose(item); });
}
