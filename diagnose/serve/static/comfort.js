// Comfort only: every page works without this.
'use strict';

// A form is sent once, however often the button is pressed.
for (const form of document.querySelectorAll('form[method="post"]')) {
  let sent = false;
  form.addEventListener('submit', (event) => {
    if (sent) { event.preventDefault(); return; }
    sent = true;
    form.classList.add('sent');
    setTimeout(() => { sent = false; form.classList.remove('sent'); }, 8000);
  });
}
window.addEventListener('pageshow', (event) => { if (event.persisted) location.reload(); });

// What is typed stays in this tab until it is saved: a tap on another page loses nothing.
const KEPT = 2 * 3600 * 1000;
const fields = (form) => [...form.elements].filter((e) => e.name && e.matches(
  'input:not([type="hidden"], [type="file"]), select, textarea:not([hidden])'));
const boxed = (e) => e.type === 'radio' || e.type === 'checkbox';
const draftOf = (form) => `draft:${new URL(form.action).pathname}`;
const cameBack = performance.getEntriesByType('navigation')[0]?.type === 'back_forward';
try {
  const here = new Set();
  for (const form of document.querySelectorAll('form[data-draft]')) {
    const name = draftOf(form);
    here.add(name);
    const keep = (sent) => sessionStorage.setItem(name, JSON.stringify({ sent, at: Date.now(),
      typed: fields(form).map((e) => [e.name, e.value, boxed(e) ? e.checked : true]) }));
    if (document.querySelector('.note.fault, input[name="insist"]')) keep(false); // not saved yet
    const draft = JSON.parse(sessionStorage.getItem(name) || 'null');
    if (draft && Date.now() - draft.at < KEPT && (!draft.sent || cameBack)) {
      for (const e of fields(form)) {
        const was = draft.typed.find(([n, value]) => n === e.name && (!boxed(e) || value === e.value));
        if (was && boxed(e)) e.checked = was[2];
        else if (was) e.value = was[1];
      }
    } else if (draft) sessionStorage.removeItem(name);
    form.addEventListener('input', () => keep(false));
    form.addEventListener('submit', () => keep(true));
  }
  for (const name of Object.keys(sessionStorage)) {
    const draft = name.startsWith('draft:') && !here.has(name) && JSON.parse(sessionStorage.getItem(name));
    if (draft && draft.sent) sessionStorage.removeItem(name);
  }
} catch { /* not kept */ }

// Sliders show their figure at once, and the answer follows: each part of it by its id.
for (const form of document.querySelectorAll('form[data-live]')) {
  let waiting = 0;
  let latest = 0;
  form.classList.add('live');
  const busy = (on) => {
    for (const part of document.querySelectorAll('[aria-live]')) part.toggleAttribute('aria-busy', on);
  };
  const renew = async () => {
    const mine = ++latest;
    busy(true);
    const asked = `${form.action}?${new URLSearchParams(new FormData(form))}`;
    const answer = await fetch(asked, { headers: { 'x-part': '1' } });
    const text = await answer.text();
    if (mine !== latest) return;
    if (answer.ok) {
      const parts = new DOMParser().parseFromString(text, 'text/html').body.children;
      for (const part of [...parts]) document.getElementById(part.id)?.replaceChildren(...part.childNodes);
    }
    busy(false);
  };
  form.addEventListener('input', (event) => {
    const shown = document.getElementById(`o-${event.target.id}`);
    const { unit, now } = event.target.dataset;
    const from = Number(now) === Number(event.target.value) ? '' : `${now} → `;
    if (shown) shown.textContent = `${from}${event.target.value} ${unit}`;
    clearTimeout(waiting);
    waiting = setTimeout(renew, 150);
  });
}

// A value is judged as it is typed; it is saved with its form, not before.
const ofReading = ['unit', 'gauge', 'at', 'rpm', 'heat', 'heat-unit'];
for (const into of document.querySelectorAll('form[data-judge] .judged')) {
  const form = into.closest('form');
  const name = into.dataset.of;
  const id = name.slice(name.indexOf(':') + 1);
  const names = name.startsWith('at:') ? ofReading : [`u:${id}`, `w:${id}`];
  let waiting = 0;
  let latest = 0;
  const judge = async () => {
    const mine = ++latest;
    const sent = new FormData(form);
    const asked = new URLSearchParams();
    for (const each of [name, ...names]) if (sent.get(each)) asked.set(each, sent.get(each));
    const answer = asked.has(name) ? await fetch(`${form.dataset.judge}?${asked}`) : null;
    const text = answer && answer.ok ? await answer.text() : '';
    if (mine === latest) into.innerHTML = text.trim();
  };
  form.addEventListener('input', (event) => {
    if (![name, ...names].includes(event.target.name)) return;
    clearTimeout(waiting);
    waiting = setTimeout(judge, 400);
  });
}

// Ticks of a stage stay on this device.
for (const box of document.querySelectorAll('input[data-tick]')) {
  const name = `tick:${box.dataset.tick}`;
  try { box.checked = localStorage.getItem(name) === '1'; } catch { break; }
  box.addEventListener('change', () => {
    try { localStorage.setItem(name, box.checked ? '1' : '0'); } catch { /* not kept */ }
  });
}
