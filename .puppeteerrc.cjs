/* global module */
// The setup script decides where a browser comes from; an install must never stall on a download.
module.exports = { skipDownload: true }
