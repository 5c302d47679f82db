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

// While one types, the form is worked out on the server and what follows is shown. Nothing is recorded by it.
(() => {
  const form = document.querySelector("form[data-live]");
  const shown = document.getElementById("live");
  if (!form || !shown || !window.fetch || !window.URLSearchParams) return;
  const pause = 250;
  let timer = 0;
  let asked = 0;

  const ask = async () => {
    const mine = ++asked;
    const fields = new URLSearchParams(new FormData(form));
    fields.set("do", "live");
    try {
      const answer = await fetch(form.getAttribute("action"), { method: "POST", body: fields });
      const text = answer.ok ? await answer.text() : "";
      if (mine === asked && answer.ok) shown.innerHTML = text;
    } catch {
      if (mine === asked) shown.textContent = "The server does not answer. What you typed is still here.";
    }
  };

  form.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(ask, pause);
  });
})();
