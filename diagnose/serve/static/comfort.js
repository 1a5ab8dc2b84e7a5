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

// Sliders show their figure at once, and the answer follows.
for (const form of document.querySelectorAll('form[data-live]')) {
  const into = document.getElementById(form.dataset.live);
  let waiting = 0;
  let latest = 0;
  const renew = async () => {
    const mine = ++latest;
    into.setAttribute('aria-busy', 'true');
    const asked = `${form.action}?${new URLSearchParams(new FormData(form))}`;
    const answer = await fetch(asked, { headers: { 'x-part': '1' } });
    const text = await answer.text();
    if (mine !== latest) return;
    if (answer.ok) into.innerHTML = text;
    into.removeAttribute('aria-busy');
  };
  form.addEventListener('input', (event) => {
    const shown = document.getElementById(`o-${event.target.id}`);
    if (shown) shown.textContent = `${event.target.value} ${event.target.dataset.unit || ''}`;
    clearTimeout(waiting);
    waiting = setTimeout(renew, 150);
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
