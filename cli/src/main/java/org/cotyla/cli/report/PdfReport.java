package org.cotyla.cli.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgExternalResourceMode;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgScriptMode;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumSet;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A page that {@link HtmlReport} wrote, as PDF: A4, tagged, its font embedded, loading nothing. One
 * page gives the same bytes on every machine.
 */
public final class PdfReport {

  private static final String FAMILY = "Cotyla";
  private static final int NORMAL = 400;
  private static final int BOLD = 700;
  private static final Set<FSFontUseCase> EVERYWHERE = EnumSet.allOf(FSFontUseCase.class);

  private PdfReport() {}

  /** The PDF's bytes. */
  public static byte[] of(String page) throws IOException {
    // Its remarks on our own page are of no use to whoever asked for a report.
    XRLog.setLoggingEnabled(false);
    try (PDDocument document = new PDDocument();
        BatikSVGDrawer drawer =
            new BatikSVGDrawer(SvgScriptMode.SECURE, SvgExternalResourceMode.SECURE);
        PdfBoxRenderer renderer = builder(page, document, drawer).buildPdfRenderer()) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
      // The day is on the page; the hour and a random number would make each file another.
      document.getDocumentInformation().setCreationDate(null);
      document.getDocumentInformation().setModificationDate(null);
      document.setDocumentId(1L);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static PdfRendererBuilder builder(
      String page, PDDocument document, BatikSVGDrawer drawer) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.usePDDocument(document);
    builder.usePdfUaAccessibility(true);
    builder.withProducer("Cotyla");
    builder.useSVGDrawer(drawer);
    builder.useUriResolver((base, address) -> null);
    for (ExternalResourceControlPriority priority : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((address, kind) -> false, priority);
    }
    builder.withHtmlContent(page, null);
    font(builder, "LiberationSans-Regular", NORMAL);
    font(builder, "LiberationSans-Bold", BOLD);
    return builder;
  }

  private static void font(PdfRendererBuilder builder, String file, int weight) {
    builder.useFont(() -> open(file), FAMILY, weight, FontStyle.NORMAL, true, EVERYWHERE);
  }

  private static InputStream open(String file) {
    InputStream font = PdfReport.class.getResourceAsStream("/liberation/" + file + ".ttf");
    if (font == null) {
      throw new IllegalStateException("the font " + file + " is missing from this build");
    }
    return font;
  }
}
