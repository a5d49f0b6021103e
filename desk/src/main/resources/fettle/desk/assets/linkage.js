// Moves the drawing of a linkage with the slider. Every microsecond was worked out before; nothing is computed here.
(() => {
  const section = document.getElementById("linkage");
  const slider = document.getElementById("pulse");
  if (!section || !slider) {
    return;
  }
  const rows = new Map(JSON.parse(section.dataset.table).map((row) => [row.p, row]));
  const reading = document.getElementById("reading-at");
  const place = (id, names, values) => {
    const part = document.getElementById(id);
    names.forEach((name, at) => part.setAttribute(name, values[at]));
  };

  const draw = () => {
    const row = rows.get(Number(slider.value));
    if (!row) {
      return;
    }
    const [armX, armY, hornX, hornY, edgeX, edgeY] = row.d;
    place("arm", ["x2", "y2"], [armX, armY]);
    place("horn", ["x2", "y2"], [hornX, hornY]);
    place("surface", ["x2", "y2"], [edgeX, edgeY]);
    place("rod", ["x1", "y1", "x2", "y2"], [armX, armY, hornX, hornY]);
    place("arm-hole", ["cx", "cy"], [armX, armY]);
    place("horn-hole", ["cx", "cy"], [hornX, hornY]);
    for (const cursor of section.querySelectorAll(".cursor")) {
      cursor.setAttribute("x1", row.x);
      cursor.setAttribute("x2", row.x);
    }
    reading.textContent = row.r;
    slider.setAttribute("aria-valuetext", row.r);
  };

  const step = (by) => {
    slider.value = String(Number(slider.value) + by);
    draw();
  };

  slider.addEventListener("input", draw);
  slider.addEventListener("keydown", (event) => {
    const ways = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -25, PageUp: 25 };
    const way = ways[event.key];
    if (way === undefined || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    step(event.shiftKey && Math.abs(way) === 1 ? 5 * way : way);
  });
  section.addEventListener("click", (event) => {
    const button = event.target.closest("button");
    if (button && button.dataset.step) {
      step(Number(button.dataset.step));
    } else if (button && button.dataset.to) {
      slider.value = button.dataset.to;
      draw();
    }
  });
  draw();
})();
