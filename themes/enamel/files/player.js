// A chapter plays from its mark in the page's own player. Without this script
// the link opens the recording at that mark.
const audio = document.getElementById("audio");
if (audio) {
  for (const link of document.querySelectorAll("a[data-at]")) {
    link.addEventListener("click", (event) => {
      event.preventDefault();
      audio.currentTime = Number(link.dataset.at);
      audio.play();
    });
  }
}
