// The core as JavaScript calls it, from the built module in dist/api.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { before, test } from 'node:test';

const folder = new URL('../../dist/api/', import.meta.url);

/** The module's exports, once it is loaded. */
let core;

before(async () => {
  core = await import(new URL('skimwright.js', folder));
  const bytes = await readFile(new URL('skimwright_bg.wasm', folder));
  await core.default({ module_or_path: bytes });
});

/** Asserts that a call throws an Error with this code, path and words. */
function throws(call, code, path, words) {
  assert.throws(call, (error) => {
    assert.ok(error instanceof Error, String(error));
    assert.deepEqual({ code: error.code, path: error.path }, { code, path }, error.message);
    assert.match(error.message, words);
    return true;
  });
}

test('the default job is complete and has a plan', () => {
  const job = core.defaultJob();
  assert.equal(job.version, 2);
  assert.equal(job.part.sections[0].diameter, '20 mm');
  assert.equal(job.wanted.receiver_depth, null, 'an empty field is null, not undefined');
  const plan = core.plan(job);
  // A shank of 80 mm that becomes 50 mm, faced by 1 mm.
  assert.ok(Math.abs(plan.cut_off.from_free_end.value - 29) < 1e-9);
  const without = core.plan({ wanted: { countersink: null } });
  assert.equal(without.centre, null, 'so is what was not asked for');
  assert.equal(plan.findings[0].level, 'clear');
  assert.deepEqual(core.plan({}), plan, 'what is left out has its default');
  assert.deepEqual(core.plan({ wanted: { length: undefined } }), plan, 'undefined is left out');
});

test('every value of a plan is plain data', () => {
  for (const job of core.demoJobs()) {
    const plan = core.plan(job);
    assert.deepEqual(JSON.parse(JSON.stringify(plan)), plan);
    assert.equal(typeof plan.time.total.value, 'number');
    assert.equal(plan.time.total.working.inputs[0].value.kind.length > 0, true);
  }
});

test('a job survives its link', () => {
  for (const job of [...core.demoJobs(), core.defaultJob()]) {
    const text = core.encode(job);
    assert.match(text, /^d[\w-]+$/);
    assert.deepEqual(core.decode(text), job);
    assert.deepEqual(core.decode(`https://shop.example/#${text}`), job);
  }
});

test('what a part could become can be planned as it is', () => {
  const job = core.defaultJob();
  const found = core.becomes(job);
  assert.ok(found.length > 20);
  for (const one of found.slice(0, 5)) {
    assert.ok(one.kept.every((share) => share > 0 && share <= 1));
    const plan = core.plan({ ...job, wanted: one.wanted });
    assert.ok(plan.findings.every((finding) => finding.level !== 'stop'), one.shank);
    assert.equal(plan.grip.value, one.grip);
  }
  throws(() => core.becomes({ colour: 'red' }), 'job', 'colour', /unknown field/);
});

test('a job that cannot be read names the field', () => {
  throws(() => core.plan({ wanted: { length: '50' } }), 'job', 'wanted.length', /^the unit is missing \(character 1\)$/);
  throws(() => core.plan({ wanted: { length: 50 } }), 'job', 'wanted.length', /expected a string/);
  throws(() => core.plan({ colour: 'red' }), 'job', 'colour', /unknown field `colour`/);
  throws(() => core.plan({ part: { bores: [{ kind: 'slot' }] } }), 'job', 'part.bores[0].kind', /unknown variant/);
  throws(() => core.encode({ version: 3 }), 'job', 'version', /version 3/);
  for (const nothing of [undefined, null, 5, 'x', [], () => {}, Symbol('x')]) {
    assert.throws(() => core.plan(nothing), { code: 'job', path: '' });
  }
  const ring = {};
  ring.part = ring;
  throws(() => core.plan(ring), 'job', '', /cannot be written as JSON/);
  throws(() => core.plan({ title: 10n }), 'job', '', /cannot be written as JSON/);
  assert.ok(core.plan({}), 'the module still works');
});

test('a link that cannot be read says why', () => {
  const text = core.encode({});
  throws(() => core.decode(''), 'empty', '', /no job/);
  throws(() => core.decode('Hello, world'), 'not-a-link', '', /no link/);
  throws(() => core.decode(`e${text.slice(1)}`), 'newer', '', /version 'e'/);
  throws(() => core.decode(text.slice(0, -2)), 'damaged', '', /cut or changed/);
  throws(() => core.decode('a'.repeat(110_000)), 'too-long', '', /longer than/);
  const section = core.defaultJob().part.sections[0];
  throws(() => core.encode({ part: { sections: Array(13).fill(section) } }), 'too-large', '', /12 sections/);
});

test('lengths are read as they are typed', () => {
  assert.equal(core.readLength('25,4', 'mm'), 25.4);
  assert.ok(Math.abs(core.readLength('1 3/8', 'in') - 34.925) < 1e-9);
  assert.ok(Math.abs(core.readLength('31.2-0.4', 'mm') - 30.8) < 1e-9);
  throws(() => core.readLength('NaN', 'mm'), 'length', '', /no unit here/);
  throws(() => core.readLength('1', 'furlong'), 'unit', '', /"mm" or "in"/);
});

test('advice and steps are plain data', () => {
  for (const job of [...core.demoJobs(), {}]) {
    const advice = core.advise(job);
    assert.deepEqual(JSON.parse(JSON.stringify(advice)), advice);
    assert.equal(typeof advice.next.kind, 'string');
    assert.ok(Array.isArray(core.steps(job)));
  }
  throws(() => core.advise({ record: { events: [5] } }), 'job', 'record.events[0]', /Event/);
});

test('kept jobs go into a file and come back', () => {
  const text = core.encode({ title: 'Arbor', record: { events: [{ at: 5, what: { note: 'Ran true' } }] } });
  const kept = `+\tk3f9\topen\t1764000000\t${text}\n`;
  const file = core.writeJobFile(kept);
  const { file: name, version, jobs } = JSON.parse(file);
  assert.deepEqual([name, version, jobs.length, jobs[0].job.title], ['skimwright-jobs', 1, 1, 'Arbor']);
  assert.equal(core.readJobFile(file), kept);
  const wrong = file.replace('"Ran true"', '5');
  assert.match(core.readJobFile(wrong), /^-\tk3f9\tArbor\trecord\.events\[0\]\.what\.note\tinvalid type.*\n$/);
  throws(() => core.readJobFile('{}'), 'not-ours', '', /no jobs of this program/);
  throws(() => core.readJobFile('hello'), 'not-json', '', /no JSON/);
  throws(() => core.writeJobFile('hello'), 'lines', '', /lines/);
  throws(() => core.writeJobFile('+\ta\t\t\tdAAAA'), 'damaged', '', /'a'/);
});
