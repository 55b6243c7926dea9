// The code of the QR picture stands behind the # of the address, where no log sees it.
const code = decodeURIComponent(location.hash.slice(1));
const field = document.querySelector("input[name=code]");
if (code && field) {
  field.value = code;
  history.replaceState(null, "", location.pathname);
}
