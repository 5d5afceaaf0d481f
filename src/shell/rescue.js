// The screen that is left when the page cannot go on: what happened, the job's link, and ways back.
//
// Uses neither the WebAssembly part nor its storage code, and works where storage is refused.

const JOB = 'skimwright.job';
const JOB_ASIDE = 'skimwright.job.aside';

const words = {
  crashTitle: 'Skimwright has stopped',
  crash: 'A fault in the program stopped this page. Your part and your machine are not to blame, and neither are you. '
    + 'Do not rely on figures from before the stop without looking at them again.',
  loadTitle: 'Skimwright could not start',
  load: 'A part of the page did not arrive, or this browser cannot run it. Check the connection and reload.',
  oldTitle: 'This browser cannot run Skimwright',
  old: 'It lacks WebAssembly, or has it switched off. An up-to-date browser will do.',
  noJob: 'No saved job was found on this device.',
  savedJob: 'Your job, as last saved',
  openedJob: 'The job in the address',
  keep: 'Keep the link: opened in any browser, it brings the job back.',
  copy: 'Copy',
  copied: 'Copied',
  copyByHand: 'Selected: copy it by hand',
  reload: 'Reload',
  reloadWithoutAddress: 'Reload without the job in the address',
  reloadWithoutSaved: 'Reload without the saved job',
  asideNote: 'If it stops again and again, reload without the saved job. It is put aside on this device, not deleted.',
  reloadUpdated: 'Reload with the newer version',
  detail: 'For a report',
};

let shown = false;
let update = null;

export function showCrash(error) {
  show(words.crashTitle, words.crash, error);
}

export function showNotLoaded(error) {
  show(words.loadTitle, words.load, error);
}

export function showTooOld() {
  show(words.oldTitle, words.old, null);
}

// Adds a button for the newer version, now or as soon as the screen is shown.
export function offerUpdate(apply) {
  update = apply;
  const actions = document.querySelector('.rescue-actions');
  if (shown && actions.querySelector('.rescue-update') === null) {
    actions.append(updateButton());
  }
}

function show(title, text, error) {
  if (shown) {
    return;
  }
  shown = true;

  const saved = savedJob();
  const opened = location.hash.slice(1);
  const screen = element('main', 'rescue');
  const told = element('div', 'rescue-told');
  told.setAttribute('role', 'alert');
  told.append(element('h1', 'rescue-title', title), element('p', 'rescue-text', text));
  screen.append(told);

  if (saved !== '') {
    screen.append(linkField(words.savedJob, saved));
  }
  if (opened !== '' && opened !== saved) {
    screen.append(linkField(words.openedJob, opened));
  }
  if (saved === '' && opened === '') {
    screen.append(element('p', 'rescue-text', words.noJob));
  } else {
    screen.append(element('p', 'rescue-text', words.keep));
  }

  const actions = element('div', 'rescue-actions');
  actions.append(button(words.reload, () => location.reload()));
  if (opened !== '' && opened !== saved) {
    actions.append(button(words.reloadWithoutAddress, reloadWithoutAddress));
  }
  if (saved !== '') {
    actions.append(button(words.reloadWithoutSaved, reloadWithoutSaved));
  }
  if (update !== null) {
    actions.append(updateButton());
  }
  screen.append(actions);
  if (saved !== '') {
    screen.append(element('p', 'rescue-text', words.asideNote));
  }
  if (error) {
    screen.append(element('p', 'rescue-detail', `${words.detail}: ${error.name}: ${error.message}`));
  }
  document.body.replaceChildren(screen);
  document.title = title;
}

function linkField(label, job) {
  const field = element('div', 'rescue-link');
  const caption = element('label', 'rescue-label', label);
  const box = element('textarea', 'rescue-box');
  box.id = label.replace(/\W+/g, '-').toLowerCase();
  box.readOnly = true;
  box.rows = 3;
  box.value = `${location.origin}${location.pathname}#${job}`;
  box.addEventListener('focus', () => box.select());
  caption.htmlFor = box.id;

  const copy = button(words.copy, async () => {
    copy.textContent = (await copyFrom(box)) ? words.copied : words.copyByHand;
  });
  field.append(caption, box, copy);
  return field;
}

async function copyFrom(box) {
  box.select();
  try {
    await navigator.clipboard.writeText(box.value);
    return true;
  } catch {
    // Refused, or not a secure address: the old way works on a selection.
    return document.execCommand('copy');
  }
}

function savedJob() {
  try {
    return localStorage.getItem(JOB) || '';
  } catch {
    return '';
  }
}

function reloadWithoutSaved() {
  try {
    const job = localStorage.getItem(JOB);
    if (job !== null) {
      localStorage.setItem(JOB_ASIDE, job);
      localStorage.removeItem(JOB);
    }
  } catch {
    // Without storage nothing is saved that could stop the page again.
  }
  reloadWithoutAddress();
}

function reloadWithoutAddress() {
  history.replaceState(null, '', location.pathname + location.search);
  location.reload();
}

function updateButton() {
  const made = button(words.reloadUpdated, update);
  made.classList.add('rescue-update');
  return made;
}

function button(label, act) {
  const made = element('button', 'rescue-button', label);
  made.type = 'button';
  made.addEventListener('click', act);
  return made;
}

function element(name, className, text = '') {
  const made = document.createElement(name);
  made.className = className;
  made.textContent = text;
  return made;
}
