/* Cameras for tests, made of files: every NAME.cam in the folder that the
 * environment variable TEST_CAMERA_DIR names is a camera. Its first line says
 * what it offers (GStreamer caps), its second is the text of a live source. A
 * file that appears is a camera plugged in, one that goes is unplugged. Needs
 * neither a device nor root. */
#include <gst/gst.h>
#include <string.h>

#define PACKAGE "test_camera"
#define LOOK_EVERY_US 200000

typedef struct {
  GstDevice parent;
  gchar* source;
} TestCamera;
typedef struct {
  GstDeviceClass parent;
} TestCameraClass;
G_DEFINE_TYPE(TestCamera, test_camera, GST_TYPE_DEVICE)

static GstElement* test_camera_create_element(GstDevice* device,
                                              const gchar* name) {
  /* No ghost pads by the parser: they would break decodebin inside. */
  GstElement* bin = gst_parse_bin_from_description(
      ((TestCamera*)device)->source, FALSE, NULL);
  if (bin == NULL) return NULL;
  GstPad* open = gst_bin_find_unlinked_pad(GST_BIN(bin), GST_PAD_SRC);
  if (open != NULL) {
    gst_element_add_pad(bin, gst_ghost_pad_new("src", open));
    gst_object_unref(open);
  }
  if (name != NULL) gst_object_set_name(GST_OBJECT(bin), name);
  return bin;
}

static void test_camera_finalize(GObject* object) {
  g_free(((TestCamera*)object)->source);
  G_OBJECT_CLASS(test_camera_parent_class)->finalize(object);
}

static void test_camera_class_init(TestCameraClass* type) {
  GST_DEVICE_CLASS(type)->create_element = test_camera_create_element;
  G_OBJECT_CLASS(type)->finalize = test_camera_finalize;
}

static void test_camera_init(TestCamera* camera) { camera->source = NULL; }

static GstDevice* read_camera(const gchar* dir, const gchar* file) {
  gchar* path = g_build_filename(dir, file, NULL);
  gchar* text = NULL;
  GstDevice* device = NULL;
  if (g_file_get_contents(path, &text, NULL, NULL)) {
    gchar** lines = g_strsplit(text, "\n", 3);
    if (lines[0] != NULL && lines[1] != NULL) {
      gchar* name = g_strndup(file, strlen(file) - strlen(".cam"));
      GstCaps* caps = gst_caps_from_string(lines[0]);
      device = g_object_new(test_camera_get_type(),
                            "display-name",
                            name,
                            "device-class",
                            "Video/Source",
                            "caps",
                            caps,
                            NULL);
      ((TestCamera*)device)->source = g_strdup(lines[1]);
      gst_caps_unref(caps);
      g_free(name);
    }
    g_strfreev(lines);
  }
  g_free(text);
  g_free(path);
  return device;
}

typedef struct {
  GstDeviceProvider parent;
  GHashTable* seen; /* file name -> device */
  GThread* thread;
  gint runs;
} TestCameras;
typedef struct {
  GstDeviceProviderClass parent;
} TestCamerasClass;
G_DEFINE_TYPE(TestCameras, test_cameras, GST_TYPE_DEVICE_PROVIDER)

static void look(TestCameras* cameras) {
  GstDeviceProvider* provider = GST_DEVICE_PROVIDER(cameras);
  const gchar* folder = g_getenv("TEST_CAMERA_DIR");
  GDir* dir = folder != NULL ? g_dir_open(folder, 0, NULL) : NULL;
  const gchar* file = NULL;
  while (dir != NULL && (file = g_dir_read_name(dir)) != NULL) {
    if (!g_str_has_suffix(file, ".cam") ||
        g_hash_table_contains(cameras->seen, file)) {
      continue;
    }
    GstDevice* device = read_camera(folder, file);
    if (device == NULL) continue;
    g_hash_table_insert(cameras->seen, g_strdup(file), device);
    gst_device_provider_device_add(provider, device);
  }
  if (dir != NULL) g_dir_close(dir);
  GHashTableIter each;
  gpointer name = NULL;
  gpointer device = NULL;
  g_hash_table_iter_init(&each, cameras->seen);
  while (g_hash_table_iter_next(&each, &name, &device)) {
    gchar* path = g_build_filename(folder != NULL ? folder : "", name, NULL);
    if (!g_file_test(path, G_FILE_TEST_EXISTS)) {
      gst_device_provider_device_remove(provider, device);
      g_hash_table_iter_remove(&each);
    }
    g_free(path);
  }
}

static gpointer keep_looking(gpointer data) {
  TestCameras* cameras = data;
  while (g_atomic_int_get(&cameras->runs)) {
    g_usleep(LOOK_EVERY_US);
    look(cameras);
  }
  return NULL;
}

static gboolean test_cameras_start(GstDeviceProvider* provider) {
  TestCameras* cameras = (TestCameras*)provider;
  cameras->seen = g_hash_table_new_full(g_str_hash, g_str_equal, g_free, NULL);
  look(cameras);
  g_atomic_int_set(&cameras->runs, 1);
  cameras->thread = g_thread_new("test-cameras", keep_looking, cameras);
  return TRUE;
}

static void test_cameras_stop(GstDeviceProvider* provider) {
  TestCameras* cameras = (TestCameras*)provider;
  g_atomic_int_set(&cameras->runs, 0);
  g_thread_join(cameras->thread);
  g_hash_table_unref(cameras->seen);
}

static void test_cameras_class_init(TestCamerasClass* type) {
  GstDeviceProviderClass* provider = GST_DEVICE_PROVIDER_CLASS(type);
  provider->start = test_cameras_start;
  provider->stop = test_cameras_stop;
  gst_device_provider_class_set_static_metadata(provider,
                                                "Test cameras",
                                                "Source/Video",
                                                "Cameras made of files",
                                                "flowkin");
}

static void test_cameras_init(TestCameras* cameras) { cameras->runs = 0; }

static gboolean init_plugin(GstPlugin* plugin) {
  return gst_device_provider_register(
      plugin, "testcameras", GST_RANK_PRIMARY, test_cameras_get_type());
}

GST_PLUGIN_DEFINE(GST_VERSION_MAJOR,
                  GST_VERSION_MINOR,
                  testcamera,
                  "Cameras made of files, for tests",
                  init_plugin,
                  "1.0",
                  "GPL",
                  "flowkin",
                  "https://example.invalid")
