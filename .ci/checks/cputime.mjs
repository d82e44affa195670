// What Lighthouse measures of the processor, in the time that the processor worked and not in the time on the wall: a
// machine that does other things meanwhile measures the same.
import { pageFunctions } from 'lighthouse/core/lib/page-functions.js';

// index is Lighthouse's benchmark index of this machine, as if it had nothing else to do.
export function index() {
  const wall = performance.now(), before = process.cpuUsage();
  const found = pageFunctions.computeBenchmarkIndex();
  const { user, system } = process.cpuUsage(before);
  return found * (performance.now() - wall) / ((user + system) / 1000);
}

// worked rewrites a trace: each task takes as long as its thread worked on it, and what is in it stands where it stood;
// pictures of the page come as much earlier as its main thread stood waiting for the processor before them. Marks stay.
// Thread clocks (tts, tdur) are those of the Trace Event Format.
export function worked({ traceEvents, ...rest }) {
  const tasks = new Map(); // by thread: the one that runs
  const waits = new Map(); // by thread: when each task began, and how long it waited
  const threads = new Map(traceEvents.filter(e => e.name === 'thread_name').map(e => [`${e.pid} ${e.tid}`, e.args.name]));
  const sorted = traceEvents.toSorted((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  const events = sorted.map(e => {
    const thread = `${e.pid} ${e.tid}`;
    const task = tasks.get(thread);
    if (task && e.ts < task.ts + task.dur) {
      if (e.ph === 'R') return e;
      const at = task.ts + (e.tts === undefined ? (e.ts - task.ts) * task.tdur / task.dur : Math.max(0, e.tts - task.tts));
      return { ...e, ts: at, ...(e.tdur !== undefined && { dur: Math.min(e.tdur, task.ts + task.tdur - at) }) };
    }
    if (e.ph !== 'X' || !e.dur || e.tdur === undefined) return e;
    tasks.set(thread, e);
    if (threads.get(thread) === 'CrRendererMain') waits.set(thread, [...waits.get(thread) ?? [], { end: e.ts + e.dur, waited: e.dur - e.tdur }]);
    return { ...e, dur: e.tdur };
  });
  const longest = [...waits.values()].sort((a, b) => b.length - a.length)[0] ?? [];
  const before = ts => longest.reduce((sum, { end, waited }) => end <= ts ? sum + waited : sum, 0);
  const start = Math.max(...sorted.filter(e => e.name === 'navigationStart' && e.args.data?.documentLoaderURL?.startsWith('http')).map(e => e.ts));
  const earlier = e => e.name === 'Screenshot' && e.ts > start ? { ...e, ts: Math.max(start + 1, e.ts - before(e.ts) + before(start)) } : e;
  return { ...rest, traceEvents: events.map(earlier) };
}
