// Where the address is encrypted a browser keeps what was looked at last.
if (window.isSecureContext && navigator.serviceWorker) navigator.serviceWorker.register("/kept.js").catch(() => {});

// A label on its way to paper: how it stands is asked again until it stands still.
(() => {
  const paper = document.getElementById("paper");
  if (!paper || !window.fetch) return;
  const pause = 1000;
  let told = "";

  const ask = async () => {
    try {
      const answer = await fetch(location.pathname + "/paper");
      const text = answer.ok ? await answer.text() : told;
      if (text !== told) paper.innerHTML = told = text;
    } catch {
      // The server may be back the next time.
    }
    wait();
  };

  const wait = () => {
    if (paper.querySelector("[data-going]")) setTimeout(ask, pause);
  };

  wait();
})();

// A photo of labels: one large button takes it, and it sends itself.
(() => {
  const form = document.querySelector("form[data-photo]");
  if (!form) return;
  const field = form.querySelector("input[type=file]");
  const says = form.querySelector("[role=status]");
  form.classList.add("quick");
  field.addEventListener("change", () => {
    const photo = field.files[0];
    if (!photo) return;
    if (photo.size > Number(form.dataset.photo)) {
      says.textContent = `This photo is larger than ${form.dataset.photo / 1048576} MB. Let the camera take smaller pictures.`;
      field.value = "";
      return;
    }
    says.textContent = "Reading the photo";
    form.setAttribute("aria-busy", "true");
    form.submit();
  });

  // Come back to, it is ready for the next.
  addEventListener("pageshow", (event) => {
    if (!event.persisted) return;
    says.textContent = "";
    field.value = "";
    form.removeAttribute("aria-busy");
  });
  const told = document.querySelector("[role=alert]");
  if (told) {
    told.tabIndex = -1;
    told.focus();
  }
})();

// A jar that dissolves is swirled now and then. When next is kept here, so that it goes on over a reload and on every page of the jar.
(() => {
  const part = document.querySelector("[data-swirl]");
  if (!part) return;
  const key = "swirl " + part.dataset.swirl;
  const every = 1000 * part.dataset.every;
  const [line, clock, button] = [part.querySelector("p"), part.querySelector("b"), part.querySelector("button")];
  const title = document.title;
  const load = () => {
    try {
      return Number(localStorage.getItem(key)) || 0;
    } catch {
      return 0;
    }
  };
  let next = Math.max(load(), Date.now() - 1000 * part.dataset.ago + every);
  let called = false;

  const show = () => {
    const left = Math.ceil((next - Date.now()) / 60000);
    const due = left <= 0;
    part.classList.toggle("due", due);
    line.firstChild.textContent = due ? "Swirl it now" : "Next swirl in ";
    clock.textContent = due ? "" : left < 60 ? `${left} min` : `${Math.floor(left / 60)} h ${left % 60} min`;
    document.title = (due ? "Swirl it: " : "") + title;
    if (due && !called && navigator.vibrate) navigator.vibrate(400);
    called = due;
  };

  button.addEventListener("click", () => {
    next = Date.now() + every;
    try {
      localStorage.setItem(key, next);
    } catch {
      // It still counts as long as the page is open.
    }
    show();
  });
  part.hidden = false;
  show();
  setInterval(show, 5000);
})();

// What was typed into a form that records is kept until it was recorded: a page that was left, a device that must be paired again, a server that is gone lose nothing of it.
// Where it was sent and no answer came, it keeps the form's own keys too, so that sent again it is known to be the same.
const drafts = (() => {
  const at = (path) => "form " + path;
  const store = (() => {
    try {
      return window.sessionStorage;
    } catch {
      return null;
    }
  })();
  const read = (path) => {
    try {
      return JSON.parse(store?.getItem(at(path)) ?? "null");
    } catch {
      return null;
    }
  };
  const write = (path, draft) => {
    try {
      if (draft) store?.setItem(at(path), JSON.stringify(draft));
      else store?.removeItem(at(path));
    } catch {
      // Without room to keep it the form works as before.
    }
  };
  return { read, write, sent: () => Object.keys(store ?? {}).filter((key) => key.startsWith(at("")) && read(key.slice(at("").length))?.sent) };
})();

(() => {
  // Here it stands recorded, and nothing needs to be kept.
  if (document.querySelector("[data-done]")) for (const key of drafts.sent()) drafts.write(key.slice("form ".length), null);

  const form = document.querySelector("form[data-live], form[data-records]");
  if (!form) return;
  const path = form.getAttribute("action");
  const shown = document.getElementById("live");
  const result = document.getElementById("result");
  const own = ["token", "once", "seen"];
  const day = 86400000;
  const fields = () => [...form.elements].filter((one) => one.name && one.tagName !== "BUTTON");
  const value = (one) => (one.type === "checkbox" ? one.checked : one.type === "radio" && !one.checked ? null : one.value);
  const first = (one) => (one.type === "radio" ? (one.defaultChecked ? one.value : null) : one.type === "checkbox" ? one.defaultChecked : one.tagName === "SELECT" ? [...one.options].find((choice) => choice.defaultSelected)?.value ?? one.options[0]?.value : one.defaultValue);
  const typed = () => fields().some((one) => one.type !== "hidden" && value(one) !== first(one));

  const keep = (sent) => drafts.write(path, { sent, at: Date.now(), values: Object.fromEntries(fields().filter((one) => one.type !== "radio" || one.checked).map((one) => [one.name, value(one)])) });

  // A page that the server answered with faults holds what was typed already. It is kept as any other, under the form's own address, so that it can be loaded again and come back to.
  const fault = document.querySelector("[role=alert]");
  const kept = form.hasAttribute("data-records");
  if (fault && kept) {
    history.replaceState(null, "", path);
    keep(false);
  }

  const back = () => {
    const draft = drafts.read(path);
    const again = ["back_forward", "reload"].includes(performance.getEntriesByType("navigation")[0]?.type);
    if (!draft || Date.now() - draft.at > day || !form.hasAttribute("data-records") || fault || !(draft.sent || again)) return false;
    for (const one of fields()) {
      if (one.type === "radio") {
        one.checked = draft.values[one.name] === one.value;
        continue;
      }
      if (!(one.name in draft.values) || (own.includes(one.name) && !draft.sent)) continue;
      if (one.type === "checkbox") one.checked = draft.values[one.name];
      else one.value = draft.values[one.name];
      if (one.type !== "hidden" && value(one) !== first(one)) one.closest("details")?.setAttribute("open", "");
    }
    return true;
  };

  // While one types, the form is worked out on the server and what follows is shown. Nothing is recorded by it. What no longer fits the fields is hollow at once.
  const pause = 250;
  const slow = 4000;
  const patience = 30000;
  let timer = 0;
  let asked = 0;

  const says = (text, state) => {
    result.classList.remove("stale", "none");
    if (state) result.classList.add(state);
    result.setAttribute("aria-busy", state === "stale" ? "true" : "false");
    let line = result.querySelector(".wait");
    if (!text) return line?.remove();
    if (!line) {
      line = document.createElement("p");
      line.className = "wait";
      result.prepend(line);
    }
    line.textContent = text;
  };

  const failed = (text) => {
    result.replaceChildren();
    shown.replaceChildren();
    says(text, "none");
    const more = document.createElement("button");
    more.type = "button";
    more.className = "quiet";
    more.textContent = "Try again";
    more.addEventListener("click", () => ask());
    result.append(more);
  };

  const put = (text) => {
    const page = document.createElement("template");
    page.innerHTML = text;
    const hands = page.content.querySelector("[data-hands]");
    hands?.remove();
    shown.replaceChildren(page.content);
    result.replaceChildren(...(hands?.childNodes ?? []));
    says(result.childElementCount ? "" : "Nothing to pour yet: see what is still missing below.", result.childElementCount ? "" : "none");
  };

  const ask = async () => {
    const mine = ++asked;
    const stop = new AbortController();
    const late = setTimeout(() => mine === asked && says("No answer yet: what you typed is kept.", "stale"), slow);
    const end = setTimeout(() => stop.abort(), patience);
    says("changed: working it out", "stale");
    const body = new URLSearchParams(new FormData(form));
    body.set("do", "live");
    try {
      const answer = await fetch(path, { method: "POST", body, signal: stop.signal });
      const text = await answer.text();
      if (mine !== asked) return;
      if (answer.ok) put(text);
      else if (answer.status === 401) failed("This device is not known here any more: pair it again. What you typed is kept.");
      else if (answer.status === 429) failed("That was too fast for the shop's computer: wait a minute. What you typed is kept.");
      else failed("The shop's computer could not work it out. What you typed is kept.");
    } catch {
      if (mine === asked) failed("No answer: the shop's computer is silent. What you typed is kept.");
    } finally {
      clearTimeout(late);
      clearTimeout(end);
    }
  };

  // The count in the title and the list on top are of what is still wrong.
  const mended = (name) => {
    const line = fault?.querySelector(`a[href="#f-${CSS.escape(name)}"]`)?.closest("p");
    if (!line) return;
    line.remove();
    const left = form.querySelectorAll("[aria-invalid=true]").length;
    document.title = document.title.replace(/^\d+ to put right: /, left ? `${left} to put right: ` : "");
    if (!left && !fault.querySelector("small")) fault.remove();
  };

  form.addEventListener("input", (event) => {
    // What is being put right is no fault any more.
    event.target.removeAttribute("aria-invalid");
    event.target.closest("fieldset, div")?.removeAttribute("aria-invalid");
    event.target.closest("fieldset, div")?.querySelectorAll(".fault, .fault + .do").forEach((one) => one.remove());
    if (kept) keep(false);
    mended(event.target.name);
    if (!result) return;
    says("changed: working it out", "stale");
    clearTimeout(timer);
    timer = setTimeout(ask, pause);
  });

  // Usual values are tapped; what is typed otherwise is none of them.
  for (const taps of form.querySelectorAll(".taps")) {
    const field = form.elements[taps.dataset.for];
    const unit = form.elements[taps.dataset.for + "-unit"];
    const is = (one) => one.value === field.value.trim() && (!one.dataset.unit || one.dataset.unit === unit?.value);
    const show = () => taps.querySelectorAll("button").forEach((one) => one.setAttribute("aria-pressed", String(is(one))));
    taps.hidden = false;
    taps.addEventListener("click", (event) => {
      const one = event.target.closest("button");
      if (!one) return;
      field.value = is(one) ? "" : one.value;
      if (one.dataset.unit && unit) unit.value = one.dataset.unit;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    });
    field.addEventListener("input", show);
    unit?.addEventListener("input", show);
    form.addEventListener("restored", show);
    show();
  }

  // Of several things that one may know, what is not asked for is not sent; it is kept in case one comes back to it.
  const ways = form.querySelector(".ways");
  if (ways) {
    const only = () => {
      const way = ways.querySelector(":checked")?.dataset.way;
      for (const one of form.querySelectorAll(".known .fields > div")) for (const part of one.querySelectorAll("input, select")) part.disabled = Boolean(way) && !one.classList.contains("in" + way);
    };
    ways.addEventListener("input", only, true);
    form.addEventListener("restored", only);
    form.addEventListener("input", only, true);
    only();
  }

  form.addEventListener("submit", (event) => {
    if (event.submitter?.value !== "record") return;
    keep(true);

    // The next batch is weighed anew, also where it is as large as this.
    drafts.write("scale " + path, null);
  });

  // At the scale: what to pour and weigh alone on the screen, each ticked when it is in. It is the same form, and nothing is recorded before its button says so.
  const record = form.querySelector("button[value=record]");
  if (result && record && kept) {
    const open = document.createElement("button");
    open.type = "button";
    open.className = "quiet";
    open.textContent = "Weigh it out";
    open.hidden = true;
    record.before(open);
    const scale = document.createElement("section");
    scale.className = "scale";
    scale.hidden = true;
    scale.setAttribute("aria-label", "Weigh it out");
    form.before(scale);
    let lamp = null;

    const light = async () => {
      try {
        lamp = await navigator.wakeLock?.request("screen");
      } catch {
        lamp = null;
      }
      const says = scale.querySelector(".lamp");
      if (says) says.textContent = lamp ? "The screen stays on while this is open." : "This browser may let the screen go dark.";
    };

    const close = () => {
      scale.hidden = true;
      document.body.classList.remove("weighing", "in");
      lamp?.release();
      lamp = null;
    };

    // Ticks are of these amounts: with others they begin anew.
    const ticks = () => [...scale.querySelectorAll("input")];
    const amounts = () => result.querySelector(".pours")?.textContent;
    const ticked = () => {
      document.body.classList.toggle("in", ticks().every((one) => one.checked));
      drafts.write("scale " + path, { amounts: amounts(), in: ticks().map((one) => one.checked) });
    };

    const show = () => {
      const sum = document.createElement("h2");
      sum.textContent = result.querySelector(".sum")?.textContent ?? "";
      const parts = [...result.querySelectorAll(".pours > div")].map((pour) => {
        const label = document.createElement("label");
        label.className = "weigh";
        const tick = document.createElement("input");
        tick.type = "checkbox";
        const word = document.createElement("span");
        word.className = "word";
        word.textContent = pour.querySelector("dt").textContent;
        label.append(tick, word, pour.querySelector(".fig").cloneNode(true), pour.querySelector("small").cloneNode(true));
        return label;
      });
      const says = document.createElement("p");
      says.className = "lamp";
      const leave = document.createElement("button");
      leave.type = "button";
      leave.className = "quiet";
      leave.textContent = "Back to the recipe";
      leave.addEventListener("click", () => history.back());
      scale.replaceChildren(sum, ...parts, says, leave);
      const before = drafts.read("scale " + path);
      if (before?.amounts === amounts()) ticks().forEach((one, place) => (one.checked = before.in[place]));
      scale.hidden = false;
      document.body.classList.add("weighing");
      ticked();
      light();
      scrollTo(0, 0);
      sum.tabIndex = -1;
      sum.focus();
    };

    open.addEventListener("click", () => {
      history.pushState("scale", "");
      show();
    });
    addEventListener("popstate", () => (scale.hidden ? 0 : close()));
    addEventListener("visibilitychange", () => !scale.hidden && document.visibilityState === "visible" && light());
    scale.addEventListener("input", ticked);
    const offer = () => {
      open.hidden = !result.querySelector(".pours") || result.classList.contains("stale") || result.classList.contains("none");
      if (!open.hidden && scale.hidden && history.state === "scale") show();
    };
    new MutationObserver(offer).observe(result, { attributes: true, childList: true });
    offer();
  }

  const restored = back();
  if (restored) {
    const line = document.createElement("p");
    line.className = "told";
    line.textContent = "What you had typed is back. ";
    const fresh = document.createElement("button");
    fresh.type = "button";
    fresh.className = "quiet";
    fresh.textContent = "Start afresh";
    fresh.addEventListener("click", () => {
      drafts.write(path, null);
      location.assign(path);
    });
    line.append(fresh);
    form.before(line);
  }
  form.dispatchEvent(new Event("restored"));
  if (result && (restored || typed())) ask();
  if (fault) {
    fault.tabIndex = -1;
    fault.focus();
  }
})();
